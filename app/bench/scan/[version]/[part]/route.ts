import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { SCAN_READER_VERSION } from '@/app/_shared/scan/scan-parts';

const PACKAGE = ['node_modules', 'zxing-wasm', 'dist'];

const PARTS: Readonly<Record<string, { readonly file: readonly string[]; readonly type: string }>> = {
  'reader.js': { file: ['iife', 'reader', 'index.js'], type: 'text/javascript; charset=utf-8' },
  'reader.wasm': { file: ['reader', 'zxing_reader.wasm'], type: 'application/wasm' },
};

/** The code reader, from this machine: nothing is fetched from elsewhere, and a device keeps what it got. */
export async function GET(
  _request: Request,
  { params }: RouteContext<'/bench/scan/[version]/[part]'>,
): Promise<Response> {
  const { version, part } = await params;
  const found = version === SCAN_READER_VERSION && Object.hasOwn(PARTS, part) ? PARTS[part] : undefined;
  if (found === undefined)
    return new Response('There is no such part.\n', {
      status: 404,
      headers: { 'content-type': 'text/plain; charset=utf-8' },
    });
  const bytes = await readFile(join(/* turbopackIgnore: true */ process.cwd(), ...PACKAGE, ...found.file));
  return new Response(new Uint8Array(bytes), {
    headers: { 'content-type': found.type, 'cache-control': 'public, max-age=31536000, immutable' },
  });
}
