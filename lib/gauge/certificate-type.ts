import type { CertificateType } from '../shop/gauge-entry';

/** The largest file that is kept: 5 MiB. A scanned certificate is a tenth of that. */
export const CERTIFICATE_BYTES_MAX = 5_242_880;

/** First bytes by which a file says what it is, whatever its name. */
const MAGIC: readonly (readonly [type: CertificateType, bytes: readonly number[]])[] = [
  ['application/pdf', [0x25, 0x50, 0x44, 0x46, 0x2d]],
  ['image/png', [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]],
  ['image/jpeg', [0xff, 0xd8, 0xff]],
];

/**
 * What a file is by its first bytes: PDF, PNG or JPEG; undefined for anything else, whatever it is called. A PDF counts
 * only when it says so in its very first bytes, so that no other kind of file can carry one within it.
 * Source: published. ISO 32000-1 7.5.2 (%PDF-), PNG (ISO/IEC 15948) 5.2, JPEG (ISO/IEC 10918-1) SOI marker.
 * @example certificateType([37, 80, 68, 70, 45, 49]) // => "application/pdf"
 */
export function certificateType(bytes: ArrayLike<number>): CertificateType | undefined {
  return MAGIC.find(([, first]) => first.every((byte, at) => bytes[at] === byte))?.[0];
}

/**
 * A file's name as it may stand in a heading: letters, digits, spaces, dots, dashes; nothing that steers a browser.
 * @example plainFileName('../scan "4".pdf') // => "scan 4.pdf"
 */
export function plainFileName(name: string): string {
  const last = name.split(/[\\/]/).at(-1) ?? '';
  return last
    .replace(/[^\p{L}\p{N} ._-]/gu, '')
    .replace(/^[. ]+/, '')
    .trim()
    .slice(0, 100);
}
