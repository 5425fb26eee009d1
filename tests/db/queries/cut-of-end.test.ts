import { expect, it } from 'vitest';
import { cutsOfEnd } from '@/db/queries/cut-of-end';
import { acceptShop } from '../../support/accept-shop';
import { must } from '../../support/db';
import { sender } from '../../support/send';

// source: hand. One thread, then three: the second end falls in the second row; nothing tells of cones.
it('Q31: finds the row of the log that an end falls in, taken-back rows left out', () => {
  const db = acceptShop();
  const send = sender(db);
  const first = must(send.cut('D-56-01', 1, { jobLineId: 'J-1.1' }));
  must(send.cut('D-56-01', 3, { jobLineId: 'J-1.1' }));
  const end = { jobLineId: 'J-1.1', endNo: 2 };
  expect(cutsOfEnd(db, end)).toMatchObject([{ operation: 'thread', toolId: 'D-56-01', goodEnds: 3 }]);
  expect(cutsOfEnd(db, { ...end, endNo: 1 })).toMatchObject([{ goodEnds: 1, entryId: first.id }]);
  expect(cutsOfEnd(db, { ...end, endNo: 5 })).toEqual([]);
  must(send.reverse(first.id));
  expect(cutsOfEnd(db, { ...end, endNo: 1 })).toMatchObject([{ goodEnds: 3 }]);
});
