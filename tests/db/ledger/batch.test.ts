import { expect, it } from 'vitest';
import { checkBatch } from '@/db/ledger/batch';
import { DIE, receive, testShop } from '../../support/db';

// source: hand. Two entries were written as one list: the same list passes, a longer or a shorter one does not.
it('knows a list that was sent before by its length', () => {
  const db = testShop();
  receive(db, 'D-56-01', DIE, { entryId: 'list-0000' });
  receive(db, 'D-56-02', DIE, { entryId: 'list-0001' });
  const passes = (first: number, count: number) =>
    checkBatch(db, (place) => `list-${String(first + place).padStart(4, '0')}`, count).ok;
  expect([passes(0, 1), passes(0, 2), passes(0, 3)]).toEqual([false, true, false]);
  expect([passes(7, 1), passes(7, 3), passes(0, 0)]).toEqual([true, true, true]);
});
