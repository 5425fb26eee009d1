import type { Permit } from '../../lib/access/permit';
import { CERTIFICATE_BYTES_MAX, certificateType, plainFileName } from '../../lib/gauge/certificate-type';
import { type Refusal, type Result, refuse } from '../../lib/result';
import type { FileCertificate } from '../../lib/shop/gauge-input';
import { hashOf, keepAttachment } from '../attachments';
import type { Env, Recorded } from '../ledger/ledger';
import type { Db } from '../open';
import { recordToolEntry } from './tool-entry';

/**
 * Files the certificate of a calibration: the bytes once, by their hash, and the entry that names them, in one
 * transaction. What it is, is read from the bytes and not from its name.
 */
export function fileCertificate(
  db: Db,
  permit: Permit<'file-certificate'>,
  input: FileCertificate & { readonly bytes: Uint8Array },
  env: Env,
): Result<Recorded, Refusal> {
  const { bytes, calibrationId } = input;
  if (bytes.length === 0) return refuse('empty', 'This file is empty.');
  if (bytes.length > CERTIFICATE_BYTES_MAX)
    return refuse('too-large', 'This file is larger than 5 MB. Scan it at a lower resolution.');
  const type = certificateType(bytes);
  if (type === undefined)
    return refuse('type', 'A certificate is kept as PDF, PNG or JPEG; this is another kind of file.');
  const sha256 = hashOf(bytes);
  const payload = { calibrationId, sha256, name: plainFileName(input.name), type, sizeBytes: bytes.length };
  const content = { kind: 'gauge-certificate-filed', payload } as const;
  return recordToolEntry(db, permit, input, env, content, () => {
    keepAttachment(db.$client, { sha256, type, bytes });
    return { ok: true, value: null };
  });
}
