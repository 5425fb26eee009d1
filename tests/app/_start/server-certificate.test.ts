import { execFileSync } from 'node:child_process';
import { X509Certificate } from 'node:crypto';
import { chmodSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { ensureServerCertificate } from '@/app/_start/server-certificate.mjs';

const nowMs = Date.UTC(2031, 4, 12, 9);
const dayMs = 86_400_000;
const names = ['127.0.0.1', '192.0.2.20', '::1', 'crib-pc.local', 'localhost'];

let dir: string;
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'edgekeep-https-'));
});
afterEach(() => rmSync(dir, { recursive: true, force: true }));

const file = (name: string) => join(dir, 'https', name);
const make = (atMs = nowMs, named = names) => ensureServerCertificate(dir, named, atMs);

// source: published. RFC 5280: 4.2.1.9 (an authority says so, an end certificate does not), 4.1.2.5 (validity), 4.2.1.6 (names).
it('is signed by the shop authority and names every address', async () => {
  const made = await make();
  const authority = new X509Certificate(made.authority);
  const server = new X509Certificate(made.cert);
  expect([authority.ca, server.ca]).toEqual([true, false]);
  expect(authority.verify(authority.publicKey)).toBe(true);
  expect(server.checkIssued(authority)).toBe(true);
  expect(server.verify(authority.publicKey)).toBe(true);
  expect(server.verify(server.publicKey)).toBe(false);
  for (const name of ['crib-pc.local', 'localhost']) expect(server.checkHost(name), name).toBe(name);
  for (const ip of ['127.0.0.1', '192.0.2.20', '::1']) expect(server.checkIP(ip), ip).toBe(ip);
  expect(server.checkHost('evil.example')).toBeUndefined();
  expect(server.checkIP('192.0.2.21')).toBeUndefined();
});

// source: published. CA/Browser Forum Baseline Requirements 6.3.2, from memory: at most 398 days from 2020-09-01.
it('lasts no longer than browsers take, and begins early enough for a slow clock', async () => {
  const { cert } = await make();
  const { validFrom, validTo } = new X509Certificate(cert);
  expect((Date.parse(validTo) - Date.parse(validFrom)) / dayMs).toBeLessThanOrEqual(398);
  expect(nowMs - Date.parse(validFrom)).toBe(dayMs);
});

// source: other-software. OpenSSL walks the chain by its own rules, at the moment for which it was made.
it('is a chain that OpenSSL accepts for a server under its name', async () => {
  const made = await make();
  writeFileSync(join(dir, 'ca.crt'), made.authority);
  writeFileSync(join(dir, 'server.crt'), made.cert);
  const verify = (host: string) =>
    execFileSync(
      'openssl',
      [
        ...['verify', '-purpose', 'sslserver', '-attime', String(nowMs / 1000)],
        ...['-verify_hostname', host, '-CAfile', join(dir, 'ca.crt'), join(dir, 'server.crt')],
      ],
      { encoding: 'utf8', stdio: 'pipe' },
    );
  expect(verify('crib-pc.local')).toContain('OK');
  expect(() => verify('evil.example')).toThrow();
});

describe('what is kept', () => {
  it('is read by the owner only, whole, and narrowed again where a copy left it open', async () => {
    await make();
    expect(readdirSync(join(dir, 'https')).sort()).toEqual(['authority.pem', 'server.pem']);
    chmodSync(file('authority.pem'), 0o644);
    await make();
    for (const name of ['authority.pem', 'server.pem']) expect(statSync(file(name)).mode & 0o777).toBe(0o600);
  });

  it('never gives the key of the authority to the server', async () => {
    const made = await make();
    expect(made.authority).not.toContain('PRIVATE KEY');
    expect(readFileSync(file('authority.pem'), 'utf8')).not.toContain(made.key.trim());
  });

  it('stays the same as long as it fits', async () => {
    const first = await make();
    expect(await make(nowMs + 300 * dayMs)).toEqual(first);
  });

  it('is one authority when two starts make it at once', async () => {
    const [one, two] = await Promise.all([make(), make()]);
    expect(one.authority).toBe(two.authority);
  });
});

describe('the server certificate is made anew, and tablets go on trusting it,', () => {
  it.each([
    ['when the machine has another address', nowMs, [...names, '198.51.100.7']],
    ['when it has one less', nowMs, names.slice(1)],
    ['near its end', nowMs + 370 * dayMs, names],
  ])('%s', async (_when, atMs, named) => {
    const first = await make();
    const next = await make(atMs, named);
    expect(next.cert).not.toBe(first.cert);
    expect(next.authority).toBe(first.authority);
    expect(new X509Certificate(next.cert).verify(new X509Certificate(first.authority).publicKey)).toBe(true);
  });

  it('when its file is damaged', async () => {
    const first = await make();
    writeFileSync(file('server.pem'), 'nothing');
    const next = await make();
    expect(next.cert).not.toBe(first.cert);
    expect(next.authority).toBe(first.authority);
  });
});

it('makes a new authority only when the old one ends', async () => {
  const first = await make();
  const next = await make(nowMs + 3640 * dayMs);
  expect(next.authority).not.toBe(first.authority);
  expect(new X509Certificate(next.cert).verify(new X509Certificate(first.authority).publicKey)).toBe(false);
});

describe('refuses in one sentence', () => {
  it('when the authority is damaged: tablets would have to trust another', async () => {
    await make();
    const text = readFileSync(file('authority.pem'), 'utf8');
    writeFileSync(file('authority.pem'), text.slice(text.indexOf('-----BEGIN CERT')));
    await expect(make()).rejects.toThrow(/^The authority in \S+ is damaged: [^\n]+ trust the new one\.$/);
  });

  it('when the folder cannot be had', async () => {
    writeFileSync(join(dir, 'https'), 'a file');
    await expect(make()).rejects.toThrow(
      /^The https certificate cannot be kept in [^\n]+ without --https\.$/,
    );
  });
});
