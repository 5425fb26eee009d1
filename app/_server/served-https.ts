import 'server-only';
import { X509Certificate } from 'node:crypto';

/** How this program serves https, as its start left it; see app/_start/https-door.mjs. */
export interface ServedHttps {
  readonly port: number;
  readonly httpPort: number;
  /** Addresses and names of this machine for other devices, best first; none when it listens to this machine only. */
  readonly hosts: readonly string[];
  /** The certificate of the shop's authority, PEM; its key is not here. */
  readonly authority: string;
}

/** Undefined when the program was started without --https. */
export function servedHttps(): ServedHttps | undefined {
  return Reflect.get(globalThis, Symbol.for('edgekeep.https'));
}

/** The SHA-256 fingerprint of a certificate in four lines of eight pairs, for comparing by eye. */
export function fingerprintLines(pem: string): readonly string[] {
  const pairs = new X509Certificate(pem).fingerprint256.split(':');
  return [0, 8, 16, 24].map((from) => pairs.slice(from, from + 8).join(' '));
}
