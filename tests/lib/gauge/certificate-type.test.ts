import { expect, it } from 'vitest';
import { certificateType, plainFileName } from '@/lib/gauge/certificate-type';

const bytes = (text: string) => [...text].map((letter) => letter.charCodeAt(0));

// source: published. The first bytes of PDF (ISO 32000-1), PNG (ISO/IEC 15948) and JPEG (ISO/IEC 10918-1).
it.each([
  [bytes('%PDF-1.7\n'), 'application/pdf'],
  [[0x89, ...bytes('PNG\r\n'), 0x1a, 0x0a, 0], 'image/png'],
  [[0xff, 0xd8, 0xff, 0xe0], 'image/jpeg'],
  [bytes('<html>%PDF-1.7'), undefined],
  [bytes('\n%PDF-1.7'), undefined],
  [bytes('MZ'), undefined],
  [bytes('GIF89a'), undefined],
  [bytes('<svg xmlns='), undefined],
  [bytes('PK\u0003\u0004'), undefined],
  [[0xff, 0xd8], undefined],
  [[], undefined],
])('%j is %s', (first, type) => {
  expect(certificateType(first)).toBe(type);
});

// source: hand.
it.each([
  ['PM-38-2.pdf', 'PM-38-2.pdf'],
  ['C:\\scans\\ring 1.jpg', 'ring 1.jpg'],
  ['../../etc/passwd', 'passwd'],
  ['a"; filename="b.html\r\nX: y', 'a filenameb.htmlX y'],
  ['..hidden', 'hidden'],
  ['Prüfschein №3.pdf', 'Prüfschein 3.pdf'],
])('%j is kept as %j', (name, kept) => {
  expect(plainFileName(name)).toBe(kept);
});
