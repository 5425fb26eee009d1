import { isIP } from 'node:net';
import { hostname } from 'node:os';

/** Name endings that only a local network hands out. Source: RFC 6761 (localhost), RFC 6762 (local), RFC 8375 (home.arpa). */
const localEndings = ['.local', '.localhost', '.home.arpa', '.lan', '.internal'];

/**
 * Refuses a request under a name that nobody gave this machine. A page of another site can have a name of its own lead here
 * (DNS rebinding), and everything it then sends would look as if it came from our own pages. An address in figures, a name
 * without a dot and a local name cannot be had from outside; a full domain name is let in when it was given with --name.
 */
export function withKnownName(handle, names) {
  const given = new Set([...names, hostname()].map((name) => name.toLowerCase()));
  return (request, response) => {
    const name = nameOf(request.headers.host ?? '');
    if (isLocal(name) || given.has(name)) return handle(request, response);
    response.writeHead(421, {
      'content-type': 'text/plain; charset=utf-8',
      'x-content-type-options': 'nosniff',
    });
    response.end(sentence(name));
  };
}

/** The name in a Host header, without its port, the brackets of an IPv6 address and a closing dot. */
function nameOf(host) {
  const bare = /^\[(.*)\](?::\d*)?$/.exec(host)?.[1] ?? host.replace(/:\d*$/, '');
  return bare.toLowerCase().replace(/\.$/, '');
}

function isLocal(name) {
  return (
    isIP(name) !== 0 || /^[a-z0-9_-]*$/.test(name) || localEndings.some((ending) => name.endsWith(ending))
  );
}

function sentence(name) {
  const shown = /^[a-z0-9.-]{1,80}$/.test(name) ? name : 'NAME';
  return `Edgekeep is not served under this name. Use its address in figures, or start it with --name ${shown}.\n`;
}
