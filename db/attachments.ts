import { createHash } from 'node:crypto';
import type { Database } from 'better-sqlite3';
import type { CertificateType } from '../lib/shop/gauge-entry';
import { statement } from './ledger/statements';

const KEEP = 'INSERT INTO attachment (sha256, type, data) VALUES (?, ?, ?) ON CONFLICT (sha256) DO NOTHING';

/** The name under which a file is kept: SHA-256 of its bytes, in hexadecimal. */
export function hashOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

/** Keeps a file's bytes, once, however often it is filed. Part of the transaction of the entry that names it. */
export function keepAttachment(
  client: Database,
  file: { readonly sha256: string; readonly type: CertificateType; readonly bytes: Uint8Array },
): void {
  statement(client, KEEP).run(file.sha256, file.type, Buffer.from(file.bytes));
}
