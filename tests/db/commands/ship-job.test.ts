import { expect, it } from 'vitest';
import { accountPieces } from '@/db/commands/care-for-tool';
import { findJob } from '@/db/queries/jobs';
import { readRecallSheet } from '@/db/queries/recall-sheet';
import { AccountPiecesInput } from '@/lib/shop/kit-input';
import { acceptSender, acceptShop, planLine } from '../../support/accept-shop';
import { ENV, entered, may, must, NOW_MS, sentence } from '../../support/db';
import { sender } from '../../support/send';

// source: hand. A job leaves once; a cancelled one does not.
it('a job leaves the house once, unless it is cancelled', () => {
  const db = acceptShop();
  const { ship } = acceptSender(db);
  must(planLine(db, 'J-2', 5));
  must(sender(db).close('J-2', 'cancelled'));
  expect(sentence(ship('J-2'))).toBe('Job J-2 is cancelled.');
  must(sender(db).close('J-1', 'done'));
  const same = entered();
  must(ship('J-1', '2026-03-02', same));
  expect(must(ship('J-1', '2026-03-02', same)).alreadyRecorded).toBe(true);
  expect(sentence(ship('J-1'))).toBe('Job J-1 already left on 2 Mar 2026.');
  expect(findJob(db, 'J-1')?.shippedOnDay).toBe('2026-03-02');
  must(planLine(db, 'J-1', 20));
  expect(findJob(db, 'J-1')).toMatchObject({ status: 'open', shippedOnDay: '2026-03-02' });
});

// source: hand. Two ends without a gauge: held.
it('not while ends of it are held', () => {
  const db = acceptShop();
  const { accept, ship } = acceptSender(db);
  must(accept(2, { gauges: [] }));
  must(sender(db).close('J-1', 'done'));
  expect(sentence(ship('J-1'))).toMatch(/^2 ends of J-1.1 cannot be released yet: no gauge is recorded/);
});

// source: hand. TRADE: account for every piece before the tube or the bench is released; a lead may end the search.
it('Q1: not while the pieces of a tool that broke on it are searched for', () => {
  const db = acceptShop();
  const { ship } = acceptSender(db);
  const send = sender(db);
  must(send.issue('D-56-01', { jobLineId: 'J-1.1' }));
  must(send.cut('D-56-01', 3, { jobLineId: 'J-1.1' }));
  must(send.giveBack('D-56-01', { condition: 'damaged', pieces: 'owed' }));
  must(send.close('J-1', 'done'));
  expect(sentence(ship('J-1'))).toMatch(/^Pieces of D-56-01, which was out for J-1.1, are still to be found/);
  const found = AccountPiecesInput.parse({
    ...entered(),
    toolId: 'D-56-01',
    allFound: true,
    where: 'bore of end 3',
  });
  must(accountPieces(db, may('return-tool'), found, ENV));
  must(ship('J-1'));
});

// source: hand. Gauged on 2 March, shipped the same day: the recall says so.
it('a recall tells shipped ends from those in house', () => {
  const db = acceptShop();
  const { accept, ship, open } = acceptSender(db);
  must(planLine(db, 'J-2', 5));
  must(accept(2));
  must(accept(3, { jobLineId: 'J-2.1' }));
  must(sender(db).close('J-1', 'done'));
  must(ship('J-1'));
  const { recallId } = must(open('G-56-GO-1', {}, NOW_MS + 60_000));
  expect(
    readRecallSheet(db, recallId)?.suspects.map(({ jobId, shippedOnDay }) => [jobId, shippedOnDay]),
  ).toEqual([
    ['J-1', '2026-03-02'],
    ['J-2', null],
  ]);
});
