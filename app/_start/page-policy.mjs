import { randomBytes } from 'node:crypto';

/**
 * The content security policy of a page: scripts only with this answer's nonce, nothing from other hosts, no frames.
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
    "object-src 'none'",
    "base-uri 'self'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join('; ');
}

/** Gives each request a policy of its own. Next reads it from the request and puts the nonce on its scripts. */
export function withPagePolicy(handle) {
  return (request, response) => {
    const policy = pagePolicy(randomBytes(16).toString('base64'));
    request.headers['content-security-policy'] = policy;
    response.setHeader('Content-Security-Policy', policy);
    return handle(request, response);
  };
}
