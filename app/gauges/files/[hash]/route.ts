import { shopDb } from '@/db/client';
import { findAttachment, findFileName } from '@/db/queries/gauges';

const ENDING = { 'application/pdf': 'pdf', 'image/png': 'png', 'image/jpeg': 'jpg' } as const;

/**
 * A filed certificate, as a file to save. Its type is what its bytes were found to be; a browser may neither guess another
 * nor run anything in it.
 */
export async function GET(
  _request: Request,
  { params }: RouteContext<'/gauges/files/[hash]'>,
): Promise<Response> {
  const { hash } = await params;
  const file = /^[0-9a-f]{64}$/.test(hash) ? findAttachment(shopDb(), hash) : undefined;
  if (file === undefined)
    return new Response('There is no such file.\n', {
      status: 404,
      headers: { 'content-type': 'text/plain; charset=utf-8', 'x-content-type-options': 'nosniff' },
    });
  const name = findFileName(shopDb(), hash) || `certificate.${ENDING[file.type]}`;
  return new Response(new Uint8Array(file.data), {
    headers: {
      'content-type': file.type,
      'content-disposition': `attachment; filename="certificate.${ENDING[file.type]}"; filename*=UTF-8''${encodeURIComponent(name)}`,
      'content-security-policy': "default-src 'none'; sandbox",
      'x-content-type-options': 'nosniff',
      'cross-origin-resource-policy': 'same-origin',
      'cache-control': 'private, no-store',
    },
  });
}
