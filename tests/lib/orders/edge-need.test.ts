import { expect, it } from 'vitest';
import { addDays } from '@/lib/calendar/day';
import { listCandidates } from '@/lib/capability/candidates';
import { walkEdge } from '@/lib/capability/edge-walk';
import { indexCandidates } from '@/lib/capability/fitting-candidates';
import { queueLines } from '@/lib/capability/line-order';
import { needStatuses } from '@/lib/capability/need-status';
import { edgeNeeds, type OrdersCount } from '@/lib/orders/edge-need';
import { piecesOnOrder } from '@/lib/orders/pieces-on-order';
import { planArrivals, planConnections, planLines, setItems } from '@/lib/outlook/plan-facts';
import { statedDraws } from '../../support/life-draws';
import { exactLives, ORDER_DIE, threadLine } from '../../support/order-shop';
import { orderFacts, shopRecord, TODAY, toolFacts } from '../../support/shop-record';

const lines = [threadLine('J-1.1', 40, 10, 20), threadLine('J-2.1', 40, 30, 40)];
const dieNeed = (
  facts: Parameters<typeof edgeNeeds>[0],
  draws = exactLives(50, { D: 50 }),
  how: OrdersCount = 'as-here',
) => {
  const found = edgeNeeds(facts, draws, how).find(({ kind }) => kind === 'die');
  if (found === undefined) throw new Error('dies are needed');
  return found;
};
const days = (need: ReturnType<typeof dieNeed>) =>
  need.walk.parts[0]?.needDays.map((piece) => piece[0]) ?? [];

// source: hand. 80 ends, 50 in the die here: 10 of job 2 come from it, then a new one, on day 30 + 10·10/40.
it('asks for a new die on the day on which the one here is done', () => {
  const tools = [toolFacts({ id: 'D', role: 'die' })];
  const need = dieNeed(shopRecord({ lines, tools }));
  expect(need.parts.map(({ id }) => id)).toEqual([ORDER_DIE.id]);
  expect(days(need)).toEqual([expect.closeTo(32.5, 9)]);
});

it('leaves out what is quarantined or scrapped, and counts a regrind from the day it is back', () => {
  for (const state of ['quarantined', 'scrapped', 'lost'] as const)
    expect(
      days(dieNeed(shopRecord({ lines, tools: [toolFacts({ id: 'D', role: 'die', state })] }))),
    ).toHaveLength(2);
  const back = toolFacts({ id: 'D', role: 'die', state: 'regrind', backOnDay: addDays(TODAY, 25) });
  expect(days(dieNeed(shopRecord({ lines, tools: [back] })))).toEqual([10]);
  expect(days(dieNeed(shopRecord({ lines, tools: [{ ...back, backOnDay: null }] })))).toHaveLength(2);
});

// source: hand. Two on order that come on day 26: as if here, nothing is needed; as drawn, job 1 stops for want of them.
it('tells what must be bought at all from what only comes late', () => {
  const orders = [
    orderFacts({ id: 'PO-1', partId: ORDER_DIE.id, quantity: 2, expectedOnDay: addDays(TODAY, 25) }),
  ];
  const facts = shopRecord({ lines, orders });
  expect(days(dieNeed(facts, exactLives(50)))).toEqual([]);
  expect(days(dieNeed(facts, exactLives(50), 'as-drawn'))).toEqual([10]);
  expect(piecesOnOrder(facts, ORDER_DIE.id)).toBe(2);
});

// source: hand. The die's one offer takes about a month: two that come on day 26 are there sooner than anything bought today,
// so job 1 waits and nothing more is bought; two that come in a year leave both jobs to be bought for.
it('asks for more only where something bought today would be there sooner', () => {
  const parts = shopRecord().parts.map((part) =>
    part.id === ORDER_DIE.id ? { ...part, leadTimeDays: 300, offers: [] } : part,
  );
  const coming = (inDays: number) => ({
    ...{ lines, parts },
    orders: [
      orderFacts({ id: 'PO-1', partId: ORDER_DIE.id, quantity: 2, expectedOnDay: addDays(TODAY, inDays) }),
    ],
  });
  const bought = (inDays: number) =>
    days(dieNeed(shopRecord(coming(inDays)), exactLives(50), 'where-buying-helps'));
  expect(bought(25)).toEqual([]);
  expect(bought(1500)).toHaveLength(2);
});

// source: identity. The plan check and the need count over the same futures: with one size, a line runs short of dies in the
// share of draws in which the plan check says it is not made.
it('runs short in the futures in which the plan check says so', () => {
  const draws = statedDraws({
    tools: { D: { mean: 1200, used: 300 } },
    parts: { [ORDER_DIE.id]: { mean: 1000, used: 0 } },
    factors: { '316-cw': [0.9, 1, 1.3] },
  });
  const facts = shopRecord({
    lines,
    tools: [toolFacts({ id: 'D', role: 'die' })],
    orders: [
      orderFacts({
        ...{ id: 'PO-1', partId: ORDER_DIE.id, quantity: 2, supplier: 'Ninefold Dies' },
        ...{ statedOnDay: addDays(TODAY, -5), expectedOnDay: addDays(TODAY, 12) },
      }),
    ],
  });
  const plan = planLines(facts);
  const queue = queueLines(plan, planConnections(facts), TODAY);
  const lineDueOnDay = new Map(plan.map(({ lineId, dueOnDay }) => [lineId, dueOnDay]));
  const fitting = indexCandidates(
    listCandidates(setItems(facts), planArrivals(facts), { today: TODAY, lineDueOnDay }),
  );
  const statuses = queue.map((queued) => needStatuses(queued, fitting));
  const all = queue.map(() => true);
  const [walked] = walkEdge('die', queue, statuses, all, draws, TODAY);
  const made = walked?.ends.filter((ends) => ends >= 40).length ?? 0;
  const short = dieNeed(facts, draws, 'as-drawn').walk.shortDays[0]?.filter(Number.isFinite).length ?? 0;
  expect(short).toBe(2048 - made);
  expect(short).toBeGreaterThan(0);
  expect(made).toBeGreaterThan(0);
});

// source: hand. Forty ends, thirty-nine of them coned: one cone left of a line asks for no blade that forty would ask for.
it('asks of each kind of edge only its own cuts', () => {
  const [line] = lines;
  if (line === undefined) throw new Error('there is a line');
  const amount = (goodCones: number) => {
    const begun = { ...line, operations: ['cone', 'thread'] as const, goodCones };
    const need = edgeNeeds(shopRecord({ lines: [begun] }), exactLives(50), 'as-here');
    const of = (wanted: string) => need.find(({ kind }) => kind === wanted)?.lines[0]?.amount ?? 0;
    return { blade: of('blade'), die: of('die') };
  };
  expect(amount(39).blade).toBeCloseTo(amount(0).blade / 40, 9);
  expect(amount(39).die).toBeCloseTo(amount(0).die, 9);
});
