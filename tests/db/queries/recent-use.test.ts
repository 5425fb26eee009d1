import { expect, it } from 'vitest';
import { listRecentUse } from '@/db/queries/recent-use';
import { DIE, HIGH, must, NOW_MS, receive, testDb, testShop } from '../../support/db';
import { sender } from '../../support/send';

const DAY_MS = 86_400_000;

// source: hand. 12 + 8 ends within half a year, 30 before it; the log is older than that: 182 days.
it('adds up what was cut of late, by size, material and operation', () => {
  const db = testShop();
  const send = sender(db);
  receive(db, 'D-56-01', DIE);
  const row = { connectionId: HIGH.id, materialId: '316' };
  must(send.cut('D-56-01', 30, { ...row, cutAtMs: NOW_MS - 300 * DAY_MS }));
  must(send.cut('D-56-01', 12, { ...row, cutAtMs: NOW_MS - 100 * DAY_MS }));
  must(send.cut('D-56-01', 8, row));
  expect(listRecentUse(db, { today: '2026-03-02' })).toEqual([
    { connectionId: HIGH.id, materialId: '316', operation: 'thread', ends: 20, days: 182 },
  ]);
});

// source: hand. A log of one day is spread over four weeks; no log says nothing.
it('does not take a few days for a rate', () => {
  const db = testShop();
  receive(db, 'D-56-01', DIE);
  must(sender(db).cut('D-56-01', 8, { connectionId: HIGH.id, materialId: '316' }));
  expect(listRecentUse(db, { today: '2026-03-02' })).toMatchObject([{ ends: 8, days: 28 }]);
  expect(listRecentUse(testDb(), { today: '2026-03-02' })).toEqual([]);
});
