import { createServer } from 'node:http';
import { createServer as createSecureServer } from 'node:https';
import { Refused } from './refused.mjs';

/**
 * Takes the port before any long work, so that a used port is refused at once and nobody else takes it meanwhile.
 * Until `serve` is called every request is told that Edgekeep is still starting. A secure door has no certificate before
 * the packages that make one are there: until `setCertificate` its connections fail.
 */
export async function openFrontDoor({ host, port, secure = false }) {
  let handle = stillStarting;
  let shown;
  const answer = (request, response) => handle(request, response);
  const server = secure ? createSecureServer(answer) : createServer(answer);
  await new Promise((resolve, reject) => {
    server.once('error', (error) => reject(refusalFor(error, host, port, secure)));
    server.listen(port, host, resolve);
  });
  const taken = server.address().port;
  return {
    server,
    port: taken,
    address: `${secure ? 'https' : 'http'}://${addressHost(host)}:${taken}`,
    serve: (handler) => {
      handle = handler;
    },
    setCertificate: ({ key, cert }) => {
      if (shown !== cert) server.setSecureContext({ key, cert, minVersion: 'TLSv1.2' });
      shown = cert;
    },
  };
}

function stillStarting(_request, response) {
  response.writeHead(503, {
    'content-type': 'text/plain; charset=utf-8',
    'retry-after': '5',
    connection: 'close',
  });
  response.end('Edgekeep is starting. Load this page again in a moment.\n');
}

/** The name to type in a browser of this machine: a server on every address is reached on the loopback one. */
export function addressHost(host) {
  if (host === '0.0.0.0' || host === '::') return '127.0.0.1';
  return host.includes(':') ? `[${host}]` : host;
}

function refusalFor(error, host, port, secure) {
  const flag = secure ? '--https-port' : '--port';
  const other = `choose another with ${flag}, for example npm start -- ${secure ? '--https ' : ''}${flag}`;
  if (error.code === 'EADDRINUSE')
    return new Refused(
      `Port ${port} on ${host} is in use: stop what uses it, or ${other} ${nextPort(port)}.`,
    );
  if (error.code === 'EACCES')
    return new Refused(`Port ${port} may not be opened by this user: ${other} ${secure ? 4171 : 4170}.`);
  if (['EADDRNOTAVAIL', 'ENOTFOUND', 'EAI_AGAIN', 'EINVAL'].includes(error.code)) {
    return new Refused(
      `This machine has no address "${host}": give one of its own with --host, or 127.0.0.1.`,
    );
  }
  return error;
}

function nextPort(port) {
  return port < 65535 ? port + 1 : 4170;
}
