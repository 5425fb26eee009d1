import 'server-only';

/** The bytes of a request, or null as soon as they are too many, whatever length was declared. */
export async function readBody(request: Request, bytesMax: number): Promise<Uint8Array | null> {
  if (Number(request.headers.get('content-length') ?? 0) > bytesMax) return null;
  const reader = request.body?.getReader();
  const chunks: Uint8Array[] = [];
  let length = 0;
  while (reader !== undefined) {
    const { done, value } = await reader.read();
    if (done) break;
    chunks.push(value);
    length += value.length;
    if (length > bytesMax) {
      await reader.cancel();
      return null;
    }
  }
  return joined(chunks, length);
}

function joined(chunks: readonly Uint8Array[], length: number): Uint8Array {
  const bytes = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.length;
  }
  return bytes;
}
