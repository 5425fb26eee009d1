import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, it } from 'vitest';
import { SCAN_PARTS, SCAN_READER_VERSION, SCAN_WORKER } from '@/app/_shared/scan/scan-parts';
import { scanWorkerPolicy, withPagePolicy } from '@/app/_start/page-policy.mjs';
import { GET } from '@/app/bench/scan/[version]/[part]/route';

const installed = readFileSync('node_modules/zxing-wasm/package.json', 'utf8');

const get = (version: string, part: string) =>
  GET(new Request('http://shop/'), { params: Promise.resolve({ version, part }) });

// source: identity. The version in the addresses is that of the installed reader, or devices would keep an old one for good.
it('carry the version of the installed reader', () => {
  expect(SCAN_READER_VERSION).toBe(JSON.parse(installed).version);
  for (const part of SCAN_PARTS) expect(part).toContain(SCAN_READER_VERSION);
});

// source: published. WebAssembly JavaScript interface: streaming compilation needs application/wasm; a module begins with \0asm.
it('are served from this machine, to be kept', async () => {
  const [code, wasm] = await Promise.all([
    get(SCAN_READER_VERSION, 'reader.js'),
    get(SCAN_READER_VERSION, 'reader.wasm'),
  ]);
  expect(code.headers.get('content-type')).toContain('text/javascript');
  expect(wasm.headers.get('content-type')).toBe('application/wasm');
  expect(wasm.headers.get('cache-control')).toContain('immutable');
  const bytes = Buffer.from(await wasm.arrayBuffer());
  expect(bytes.subarray(0, 4).toString('latin1')).toBe('\0asm');
  const path = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm');
  expect(bytes.equals(readFileSync(path))).toBe(true);
});

it('are these and nothing else of the disk', async () => {
  for (const [version, part] of [
    ['0.0.0', 'reader.wasm'],
    [SCAN_READER_VERSION, '../../package.json'],
    [SCAN_READER_VERSION, 'constructor'],
  ] as const)
    expect((await get(version, part)).status, `${version} ${part}`).toBe(404);
});

it('the worker is the one script with the policy that compiles', () => {
  let policy = '';
  const response = { setHeader: (_: string, value: string) => (policy = value) };
  withPagePolicy(() => undefined)({ url: SCAN_WORKER, headers: {} }, response);
  expect(policy).toBe(scanWorkerPolicy);
});

it('are told to the worker that keeps the bench, and let through by it', () => {
  const worker = readFileSync('public/bench-worker.js', 'utf8');
  for (const path of ["'/bench/scan/'", "'/bench/scan-worker.js'"]) expect(worker).toContain(path);
});
