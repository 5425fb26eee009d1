import { describe, expect, it } from 'vitest';
import { recordCalibration } from '@/db/commands/record-calibration';
import { findLineStanding } from '@/db/queries/acceptance';
import { findRecall } from '@/db/queries/recalls';
import { RecordCalibrationInput } from '@/lib/shop/command-input';
import { acceptSender, acceptShop } from '../../support/accept-shop';
import { entered, may, must, NOW_MS, sentence } from '../../support/db';
import { sender } from '../../support/send';

const GAUGE = 'G-56-GO-1';

function opened() {
  const db = acceptShop();
  const sends = acceptSender(db);
  const look = must(sends.accept(5)).id;
  const { recallId } = must(sends.open(GAUGE, {}, NOW_MS + 60_000));
  return { db, ...sends, look, recallId };
}

// source: hand. Five suspect ends; what is decided about them is counted by hand.
describe('deciding about suspect ends', () => {
  it('good ones can be released again, scrapped ones count no more', () => {
    const { db, dispose, look, recallId } = opened();
    expect(findLineStanding(db, 'J-1.1')).toMatchObject({ acceptedEnds: 5, releasableEnds: 0 });
    must(dispose(recallId, look, 2, { how: 'regauged-good', gaugeId: 'G-56-GO-2', evidence: '' }));
    expect(findLineStanding(db, 'J-1.1')).toMatchObject({ acceptedEnds: 5, releasableEnds: 2 });
    must(dispose(recallId, look, 1, { how: 'scrapped', evidence: 'torn' }));
    must(dispose(recallId, look, 1, { how: 'concession', evidence: 'granted by the customer' }));
    expect(findLineStanding(db, 'J-1.1')).toMatchObject({ acceptedEnds: 4, releasableEnds: 3 });
    expect(sentence(dispose(recallId, look, 2))).toBe('Only 1 of these ends are still to be decided.');
  });

  it('several looks at once, all or none; sent twice, counted once', () => {
    const db = acceptShop();
    const { accept, open, dispose } = acceptSender(db);
    const looks = [must(accept(5)).id, must(accept(3)).id];
    const { recallId } = must(open(GAUGE, {}, NOW_MS + 60_000));
    const items = (counts: number[]) =>
      looks.map((acceptanceId, at) => ({ acceptanceId, endCount: counts[at] ?? 0 }));
    expect(sentence(dispose(recallId, '', 1, { items: items([5, 4]) }))).toMatch(/Only 3 of these ends/);
    expect(findRecall(db, recallId)?.disposals).toEqual([]);
    const same = { ...entered(), items: items([5, 3]) };
    must(dispose(recallId, '', 1, same));
    expect(must(dispose(recallId, '', 1, same)).alreadyRecorded).toBe(true);
    expect(findRecall(db, recallId)?.disposals).toHaveLength(2);
  });

  it.each([
    ['gauged again with no other gauge', { how: 'regauged-good' }, /with which other gauge/],
    [
      'gauged again with the gauge itself',
      { how: 'regauged-good', gaugeId: GAUGE },
      /is the gauge that was found out/,
    ],
    [
      'gauged again with a gauge of another size',
      { how: 'regauged-good', gaugeId: 'G-25-GO-1' },
      /is not for/,
    ],
    ['gauged again with a gauge nobody knows', { how: 'regauged-good', gaugeId: 'G-99' }, /No gauge G-99/],
    [
      'a concession that nobody granted',
      { how: 'concession', evidence: '' },
      /Say who granted the concession/,
    ],
    ['a customer whom nobody told', { how: 'customer-told', evidence: '' }, /Say who was told/],
    ['an entry taken back that still stands', { how: 'taken-back' }, /still stands/],
  ])('refuses %s', (_what, over, said) => {
    const { db, dispose, look, recallId } = opened();
    expect(sentence(dispose(recallId, look, 5, over))).toMatch(said);
    expect(findRecall(db, recallId)?.disposals).toEqual([]);
  });

  it('an entry taken back meanwhile is said so, and then nothing is left of it', () => {
    const { db, dispose, close, look, recallId } = opened();
    must(sender(db).reverse(look));
    expect(sentence(dispose(recallId, look, 5))).toMatch(/was taken back meanwhile/);
    must(dispose(recallId, look, 5, { how: 'taken-back', evidence: 'counted twice' }));
    must(close(recallId));
    expect(sentence(dispose('G-1.R1', look, 5))).toMatch(/No recall/);
  });

  it('the gauge itself serves again once a calibration found it good', () => {
    const { db, dispose, look, recallId } = opened();
    must(sender(db).move(GAUGE, 'calibration'));
    const back = { ...entered(), toolId: GAUGE, onDay: '2026-03-02', result: 'pass', dueOnDay: '2026-12-31' };
    const input = RecordCalibrationInput.parse({ ...back, certificate: '', asFound: 'in' });
    must(recordCalibration(db, may('record-calibration'), input, { nowMs: NOW_MS + 120_000 }));
    must(dispose(recallId, look, 5, { how: 'regauged-good', gaugeId: GAUGE, evidence: '' }));
  });
});
