import { expect } from 'vitest';
import { replay } from '@/db/ledger/replay';
import type { Db } from '@/db/open';
import { dump, testDb } from './db';

/** What the shop keeps equals what its ledger gives when it is told anew, row for row. */
export function replayedEqualsKept(db: Db): void {
  const again = testDb();
  replay(db, again);
  expect(dump(again)).toEqual(dump(db));
}
