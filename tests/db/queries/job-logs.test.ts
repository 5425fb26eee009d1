import { expect, it } from 'vitest';
import { listJobLogs, listOrdersPlaced } from '@/db/queries/job-logs';
import { DIE, must, NOW_MS, receive, testShop } from '../../support/db';
import { sender } from '../../support/send';

const line = {
  ...{ lineNo: 1, connectionId: '9-16-high', materialId: '316', heat: '', ends: 20 },
  ...{ operations: ['thread'], startOnDay: '2026-03-09', dueOnDay: '2026-03-13', value: 'ordinary' },
};
const shown = [{ lineNo: 1, verdict: 'can-make', pMade: 0.97, ends: 20, edges: [] }];

// source: hand. What was said is kept with the plan; what was taken back is not there; sent twice it counts once though the
// figures have moved meanwhile.
it('lists what was planned and closed, with what was said', () => {
  const db = testShop();
  const send = sender(db);
  receive(db, 'D-56-01', DIE);
  const entryId = 'plan-entry-0001';
  must(send.plan({ id: 'J-1', title: '', lines: [line], shown }, { entryId }));
  const again = must(send.plan({ id: 'J-1', title: '', lines: [line], shown: [] }, { entryId }));
  expect(again.alreadyRecorded).toBe(true);
  const wrong = must(send.plan({ id: 'J-2', title: '', lines: [line] }));
  must(send.reverse(wrong.id));
  must(send.close('J-1', 'cancelled'));
  const order = {
    id: 'PO-1',
    partId: DIE.id,
    quantity: 1,
    placedOnDay: '2026-03-02',
    expectedOnDay: '2026-03-20',
  };
  must(send.order(order));
  const logs = listJobLogs(db);
  expect(logs.map(({ jobId, entries }) => [jobId, entries.map(({ kind }) => kind)])).toEqual([
    ['J-1', ['job-set', 'job-closed']],
  ]);
  expect(logs[0]?.entries[0]?.payload).toMatchObject({ shown });
  expect(listOrdersPlaced(db)).toEqual(new Map([['PO-1', NOW_MS]]));
});
