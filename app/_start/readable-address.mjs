/** An address whose percent signs cannot be read is looked for as one that leads nowhere: not found, and no fault. */
export function withReadableAddress(handle) {
  return (request, response) => {
    if (!isReadable(request.url)) request.url = '/_not-found';
    return handle(request, response);
  };
}

function isReadable(address) {
  try {
    decodeURIComponent(address.split('?', 1)[0]);
    return true;
  } catch {
    return false;
  }
}
