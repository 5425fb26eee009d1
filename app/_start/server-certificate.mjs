import { X509Certificate } from 'node:crypto';
import { isIP } from 'node:net';
import { join } from 'node:path';
import { readPrivate, writePrivate } from './private-file.mjs';
import { Refused } from './refused.mjs';
import { dayMs, ensureAuthority, isCurrent, keyAndCertificate } from './shop-authority.mjs';

/** Just over a year: browsers refuse server certificates that last longer than 398 days. */
const serverDays = 397;

/**
 * The certificate that the https address shows, signed by the shop's authority and kept beside it. It is made anew when it
 * nears its end or names other addresses than `names`. In PEM; `authority` is the certificate alone, without its key.
 * @returns {Promise<{ key: string, cert: string, authority: string }>}
 */
export async function ensureServerCertificate(dataDir, names, nowMs) {
  try {
    const authority = await ensureAuthority(dataDir, nowMs);
    const path = join(dataDir, 'https', 'server.pem');
    const kept = keyAndCertificate(readPrivate(path) ?? '');
    if (kept && fits(kept.cert, authority.cert, names, nowMs)) return { ...kept, authority: authority.cert };
    const text = await makeServerCertificate(authority, names, nowMs);
    writePrivate(path, text);
    return { ...keyAndCertificate(text), authority: authority.cert };
  } catch (error) {
    throw error instanceof Refused ? error : new Refused(refusal(error, dataDir));
  }
}

function fits(cert, authorityCert, names, nowMs) {
  const certificate = new X509Certificate(cert);
  const authority = new X509Certificate(authorityCert);
  const named = certificate.subjectAltName?.split(', ').length ?? 0;
  return (
    isCurrent(cert, nowMs) &&
    certificate.checkIssued(authority) &&
    certificate.verify(authority.publicKey) &&
    named === names.length &&
    names.every(
      (name) => (isIP(name) ? certificate.checkIP(name) : certificate.checkHost(name)) !== undefined,
    )
  );
}

async function makeServerCertificate(authority, names, nowMs) {
  const { generate } = await import('selfsigned');
  const authorityEndMs = Date.parse(new X509Certificate(authority.cert).validTo);
  const made = await generate([{ name: 'commonName', value: 'Edgekeep' }], {
    keyType: 'ec',
    algorithm: 'sha256',
    notBeforeDate: new Date(nowMs - dayMs),
    notAfterDate: new Date(Math.min(nowMs + (serverDays - 1) * dayMs, authorityEndMs)),
    ca: authority,
    extensions: [
      { name: 'basicConstraints', cA: false, critical: true },
      { name: 'keyUsage', digitalSignature: true, critical: true },
      { name: 'extKeyUsage', serverAuth: true },
      {
        name: 'subjectAltName',
        altNames: names.map((name) => (isIP(name) ? { type: 7, ip: name } : { type: 2, value: name })),
      },
    ],
  });
  return `${made.private.trim()}\n${made.cert.trim()}\n`;
}

function refusal(error, dataDir) {
  const folder = join(dataDir, 'https');
  if (error.code)
    return `The https certificate cannot be kept in ${folder} (${error.code}): make the folder writable, or start without --https.`;
  return `The https certificate could not be made (${String(error.message).split('\n')[0]}): start without --https, and report it.`;
}
