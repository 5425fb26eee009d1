import { expect, it } from 'vitest';
import { listDueDates } from '@/lib/due-dates/list-due-dates';
import type { ToolPlan } from '@/lib/replacement/tool-plan';
import { issueShop } from '../../support/issue-shop';
import { orderFacts, toolFacts } from '../../support/shop-record';

const { facts } = issueShop({
  orders: [orderFacts({ id: 'PO-1', partId: 'die-3-8', quantity: 3, receivedQuantity: 1 })],
});
const tools = [
  ...facts.tools,
  toolFacts({ id: 'G-1', role: 'go-ring', dueOnDay: '2026-03-20' }),
  toolFacts({ id: 'G-2', role: 'go-ring', dueOnDay: '2026-03-20', state: 'lost' }),
  toolFacts({ id: 'F-1', role: 'fluid', levelMl: 300, expiresOnDay: '2026-03-05' }),
];
const plan: ToolPlan = {
  ...{
    toolId: 'D-31',
    partId: 'die-3-8',
    value: 'ordinary',
    moreEnds: 12,
    wearsOutFirst: 0.2,
    lineIds: [],
    startKnown: true,
  },
  ...{ lowDay: '2026-03-10', onDay: '2026-03-12', highDay: null },
};
const dues = listDueDates(
  { ...facts, tools },
  {
    toolPlans: [plan, { ...plan, toolId: 'D-32', onDay: null }],
    orderBy: [{ partId: 'die-3-8', quantity: 2, orderByDay: '2026-02-20' }],
  },
);

// source: hand. One of each kind on its day; a lost gauge and an edge without a day in sight are left out; what should have been ordered
// in February is ordered today, 2 March.
it('lists what falls due, in the order of the days', () => {
  expect(dues.map(({ id, onDay }) => [id, onDay])).toEqual([
    ['order-by.die-3-8', '2026-03-02'],
    ['fluid-expiry.F-1', '2026-03-05'],
    ['job-start.J-1.1', '2026-03-09'],
    ['replacement.D-31', '2026-03-12'],
    ['job-due.J-1.1', '2026-03-13'],
    ['order-arrival.PO-1', '2026-03-14'],
    ['calibration.G-1', '2026-03-20'],
  ]);
});

// source: hand. Two of three are still to come; the change is an estimate with its band; a day that is written down has none.
it('says how sure a day is and what is still to come', () => {
  expect(dues.find(({ kind }) => kind === 'order-arrival')).toMatchObject({ quantity: 2 });
  expect(dues.find(({ kind }) => kind === 'replacement')).toMatchObject({
    planned: true,
    band: { lowDay: '2026-03-10', highDay: null },
  });
  expect(dues.find(({ kind }) => kind === 'calibration')?.band).toBeUndefined();
});
