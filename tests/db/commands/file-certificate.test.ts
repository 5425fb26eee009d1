import { beforeEach, expect, it } from 'vitest';
import { fileCertificate } from '@/db/commands/file-certificate';
import { replay } from '@/db/ledger/replay';
import type { Db } from '@/db/open';
import { findAttachment, findFileName, listEvidence } from '@/db/queries/gauges';
import { FileCertificateInput } from '@/lib/shop/gauge-input';
import { dump, ENV, entered, may, must, RING, receive, sentence, testDb, testShop } from '../../support/db';
import { sender } from '../../support/send';

const PDF = new TextEncoder().encode('%PDF-1.4\nan example');
/** source: other-software. printf '%%PDF-1.4\nan example' | sha256sum (GNU coreutils). */
const PDF_SHA256 = 'dad83f213ce30df7466cefcea8a8a303e7555091671cfe330a76f6528d20439c';
let db: Db;
let calibrationId: string;

const file = (bytes: Uint8Array, over = {}) => {
  const input = FileCertificateInput.parse({
    ...entered(),
    toolId: 'G-56-GO-1',
    calibrationId,
    name: 'PM-1.pdf',
    ...over,
  });
  return fileCertificate(db, may('file-certificate'), { ...input, bytes }, ENV);
};

beforeEach(() => {
  db = testShop();
  receive(db, 'G-56-GO-1', RING);
  calibrationId = must(sender(db).calibrate('G-56-GO-1')).id;
});

it('is kept once by the hash of its bytes, and named by the calibration', () => {
  must(file(PDF));
  must(file(PDF, { name: 'again.pdf' }));
  expect(listEvidence(db, 'G-56-GO-1')[0]?.file).toEqual({
    ...{ sha256: PDF_SHA256, name: 'again.pdf', type: 'application/pdf', sizeBytes: PDF.length },
  });
  expect(findAttachment(db, PDF_SHA256)?.data).toEqual(Buffer.from(PDF));
  expect(findFileName(db, PDF_SHA256)).toBe('again.pdf');
  expect(db.$client.prepare('SELECT COUNT(*) FROM attachment').pluck().get()).toBe(1);
});

it('what is no certificate is refused, and nothing is kept', () => {
  const before = dump(db);
  const html = new TextEncoder().encode('<script>');
  const large = new Uint8Array(5_242_881);
  large.set(PDF);
  expect([
    sentence(file(html)),
    sentence(file(new Uint8Array())),
    sentence(file(large)),
    sentence(file(PDF, { calibrationId: 'entry-of-none' })),
    sentence(file(PDF, { toolId: 'G-NOWHERE' })),
  ]).toEqual([
    'A certificate is kept as PDF, PNG or JPEG; this is another kind of file.',
    'This file is empty.',
    'This file is larger than 5 MB. Scan it at a lower resolution.',
    'G-56-GO-1 has no such calibration to file it with.',
    'No tool G-NOWHERE is in the record. Check the mark, or receive it first.',
  ]);
  expect(dump(db)).toEqual(before);
});

it('its bytes can be neither changed nor removed', () => {
  must(file(PDF));
  expect(() => db.$client.exec("UPDATE attachment SET type = 'image/png'")).toThrow('never changed');
  expect(() => db.$client.exec('DELETE FROM attachment')).toThrow('never removed');
});

it('a replay carries the files along', () => {
  must(file(PDF));
  const copy = testDb();
  replay(db, copy);
  expect(dump(copy)).toEqual(dump(db));
});
