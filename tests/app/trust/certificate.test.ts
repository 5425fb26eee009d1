import { X509Certificate } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { fingerprintLines } from '@/app/_server/served-https';
import { ensureServerCertificate } from '@/app/_start/server-certificate.mjs';
import { GET } from '@/app/trust/certificate/route';

const served = Symbol.for('edgekeep.https');
let dir: string;
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'edgekeep-trust-'));
});
afterEach(() => {
  Reflect.deleteProperty(globalThis, served);
  rmSync(dir, { recursive: true, force: true });
});

// source: published. The content type that devices take a certificate of an authority under; DER begins with a SEQUENCE, 0x30.
it('gives the certificate of the authority, and no key', async () => {
  const made = await ensureServerCertificate(dir, ['localhost'], Date.now());
  Reflect.set(globalThis, served, { port: 1, httpPort: 2, hosts: [], authority: made.authority });
  const answer = GET();
  expect(answer.headers.get('content-type')).toBe('application/x-x509-ca-cert');
  const bytes = Buffer.from(await answer.arrayBuffer());
  expect(bytes[0]).toBe(0x30);
  const certificate = new X509Certificate(bytes);
  expect(certificate.ca).toBe(true);
  // One certificate and not a byte more.
  expect(bytes.equals(certificate.raw)).toBe(true);
  expect(fingerprintLines(made.authority).join(' ')).toBe(certificate.fingerprint256.replaceAll(':', ' '));
});

it('says so when there is none', async () => {
  const answer = GET();
  expect(answer.status).toBe(404);
  expect(await answer.text()).toContain('without --https');
});
