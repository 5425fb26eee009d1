import type { IncomingMessage, ServerResponse } from 'node:http';
import { expect, it } from 'vitest';
import { withPagePolicy } from '@/app/_start/page-policy.mjs';

function policyOf(url: string): string {
  let policy = '';
  const response = {
    setHeader: (_name: string, value: string) => {
      policy = value;
    },
  } as unknown as ServerResponse;
  withPagePolicy(() => undefined)({ url, headers: {} } as IncomingMessage, response);
  return policy;
}

// source: published. Content Security Policy Level 3 (worker-src, 'wasm-unsafe-eval').
it('lets pages have workers of our own, and compile nothing', () => {
  for (const url of [
    '/',
    '/bench',
    '/bench/scan-worker.js/x',
    '/bench-worker.js',
    '/?/bench/scan-worker.js',
  ]) {
    expect(policyOf(url), url).toContain("worker-src 'self'");
    expect(policyOf(url), url).not.toContain('unsafe-eval');
  }
});

it('lets the worker that reads codes compile its reader, and load nothing from elsewhere', () => {
  const policy = policyOf('/bench/scan-worker.js?v=1');
  expect(policy).toContain("script-src 'self' 'wasm-unsafe-eval'");
  expect(policy).toContain("default-src 'none'");
  expect(policy).not.toContain("'unsafe-eval'");
});

it('has a nonce of its own for each answer', () => {
  expect(policyOf('/')).not.toBe(policyOf('/'));
});
