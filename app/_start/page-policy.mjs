import { randomBytes } from 'node:crypto';

/**
 * The content security policy of a page: scripts only with this answer's nonce, nothing from other hosts, no frames;
 * workers only of our own (the one that keeps the bench for the dead spot, the one that reads codes).
 * Inline styles are let in because drawings and charts position by style attributes.
 */
export function pagePolicy(nonce) {
  return [
    "default-src 'self'",
    `script-src 'self' 'nonce-${nonce}' 'strict-dynamic'`,
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "font-src 'self' data:",
    "connect-src 'self'",
    "worker-src 'self'",
    "object-src 'none'",
    "base-uri 'self'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join('; ');
}

/**
 * The policy of the worker that reads codes in the camera's picture. Its reader is compiled from WebAssembly, which no page
 * of ours may do: the permission is bound to this one script, which in return may load nothing but the reader.
 */
export const scanWorkerPolicy = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "connect-src 'self'",
].join('; ');

const scanWorkerPath = '/bench/scan-worker.js';

/** Gives each request a policy of its own. Next reads it from the request and puts the nonce on its scripts. */
export function withPagePolicy(handle) {
  return (request, response) => {
    const path = request.url.split('?', 1)[0];
    const policy =
      path === scanWorkerPath ? scanWorkerPolicy : pagePolicy(randomBytes(16).toString('base64'));
    request.headers['content-security-policy'] = policy;
    response.setHeader('Content-Security-Policy', policy);
    return handle(request, response);
  };
}
