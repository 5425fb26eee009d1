import { X509Certificate } from 'node:crypto';
import { servedHttps } from '@/app/_server/served-https';

export const dynamic = 'force-dynamic';

/** The certificate of the shop's authority, for a tablet to install: the certificate alone, in the form all devices take. */
export function GET(): Response {
  const https = servedHttps();
  if (https === undefined)
    return new Response('There is no certificate: Edgekeep was started without --https.\n', {
      status: 404,
      headers: { 'content-type': 'text/plain; charset=utf-8' },
    });
  return new Response(new Uint8Array(new X509Certificate(https.authority).raw), {
    headers: {
      'content-type': 'application/x-x509-ca-cert',
      'content-disposition': 'inline; filename="edgekeep-authority.crt"',
      'cache-control': 'no-store',
    },
  });
}
