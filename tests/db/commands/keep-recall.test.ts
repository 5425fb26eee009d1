import { describe, expect, it } from 'vitest';
import { findRecall } from '@/db/queries/recalls';
import { acceptSender, acceptShop, CONE, GO, NG } from '../../support/accept-shop';
import { entered, must, NOW_MS, sentence } from '../../support/db';
import { sender } from '../../support/send';

const DAY_MS = 86_400_000;
const GAUGE = 'G-56-GO-1';

// source: hand. Stated in each case.
describe('a recall is closed when all of its ends are decided about', () => {
  function opened() {
    const db = acceptShop();
    const sends = acceptSender(db);
    const look = must(sends.accept(5)).id;
    const { recallId } = must(sends.open(GAUGE, {}, NOW_MS + 60_000));
    return { db, ...sends, look, recallId };
  }

  it('not before', () => {
    const { db, dispose, close, look, recallId } = opened();
    expect(sentence(close(recallId))).toBe('5 suspect ends are still to be decided.');
    must(dispose(recallId, look, 4));
    expect(sentence(close(recallId))).toBe('1 suspect end is still to be decided.');
    must(dispose(recallId, look, 1, { how: 'scrapped', evidence: 'in the red bin' }));
    must(close(recallId, 'worn out'));
    expect(findRecall(db, recallId)).toMatchObject({ status: 'closed', conclusion: 'worn out' });
    expect(sentence(dispose(recallId, look, 1))).toMatch(/is closed/);
  });

  it('the same closing sent twice counts once', () => {
    const { dispose, close, look, recallId } = opened();
    must(dispose(recallId, look, 5));
    const same = entered();
    must(close(recallId, 'done', same));
    expect(must(close(recallId, 'done', same)).alreadyRecorded).toBe(true);
  });

  it('looked at again, nothing new is found; unless the evidence it rests on was taken back', () => {
    const db = acceptShop();
    const { accept, open, review } = acceptSender(db);
    const send = sender(db);
    const old = must(accept(2, { gaugedAtMs: NOW_MS - 3 * DAY_MS, gaugedOnDay: '2026-02-27' })).id;
    const good = entered();
    must(send.calibrate(GAUGE, { ...good, onDay: '2026-02-28', asFound: 'in' }));
    must(accept(3, { gauges: [{ ...GO, toolId: 'G-56-GO-2' }, NG, CONE] }));
    const { recallId } = must(open(GAUGE, {}, NOW_MS + 60_000));
    expect(findRecall(db, recallId)?.suspects).toEqual([]);
    expect(sentence(review(recallId))).toBe('Nothing new falls in its window.');
    must(send.move(GAUGE, 'in-crib'));
    must(send.reverse(good.entryId));
    must(review(recallId, {}, NOW_MS + 120_000));
    expect(findRecall(db, recallId)).toMatchObject({
      ...{ evidence: 'none', evidenceOnDay: null, suspects: [{ acceptanceId: old, endCount: 2 }] },
    });
    expect(sentence(review('G-1.R1'))).toMatch(/No recall/);
  });
});
