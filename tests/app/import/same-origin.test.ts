import { describe, expect, it } from 'vitest';
import { fromOwnPages } from '@/app/_server/same-origin';

const OURS = {
  host: 'shop.local:4170',
  origin: 'http://shop.local:4170',
  'content-type': 'application/octet-stream',
};

async function answer(headers: Record<string, string>): Promise<{ status: number; handled: boolean }> {
  let handled = false;
  const post = fromOwnPages(async () => {
    handled = true;
    return new Response('taken');
  });
  const request = new Request('http://shop.local:4170/import/check', {
    method: 'POST',
    headers,
    body: 'a,b',
  });
  const { status } = await post(request, undefined);
  return { status, handled };
}

// source: published. Fetch Standard, Origin header and CORS-safelisted request header; Fetch Metadata Request Headers
// (W3C), Sec-Fetch-Site; RFC 9110, 15.5.4 (403) and 15.5.16 (415).
describe('fromOwnPages', () => {
  it.each([
    ['our own page', {}],
    ['our own page, as the browser says itself', { 'sec-fetch-site': 'same-origin' }],
    ['our own page behind TLS', { origin: 'https://shop.local:4170' }],
    ['text/csv with its character set', { 'content-type': 'text/csv; charset=utf-8' }],
  ])('lets in %s', async (_name, headers) => {
    expect(await answer({ ...OURS, ...headers })).toEqual({ status: 200, handled: true });
  });

  it('lets in a program that is no browser and names no origin', async () => {
    const { origin: _origin, ...headers } = OURS;
    expect(await answer(headers)).toEqual({ status: 200, handled: true });
  });

  it.each([
    ['another host', { origin: 'http://evil.example' }],
    ['another port of the same host', { origin: 'http://shop.local:9999' }],
    ['a host that begins like ours', { origin: 'http://shop.local:4170.evil.example' }],
    ['a sandboxed frame or a file', { origin: 'null' }],
    ['an origin that is no address', { origin: 'shop.local:4170' }],
    ['a page of another site', { 'sec-fetch-site': 'cross-site' }],
    ['a page of another port or a sister host', { 'sec-fetch-site': 'same-site' }],
    ['another host that dresses up the body', { origin: 'http://evil.example', 'content-type': 'text/csv' }],
  ])('refuses %s before the handler runs', async (_name, headers) => {
    expect(await answer({ ...OURS, ...headers })).toEqual({ status: 403, handled: false });
  });

  it.each([
    'text/plain',
    'multipart/form-data; boundary=x',
    'application/x-www-form-urlencoded',
    'text/csvx',
  ])('refuses a body of type %s, which any page could send unasked', async (type) => {
    expect(await answer({ ...OURS, 'content-type': type })).toEqual({ status: 415, handled: false });
  });
});
