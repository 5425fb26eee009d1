import { expect, it } from 'vitest';
import { addDays } from '@/lib/calendar/day';
import { edgeNeeds, piecesOnOrder } from '@/lib/orders/edge-need';
import { exactLives, ORDER_DIE, threadLine } from '../../support/order-shop';
import { orderFacts, shopRecord, TODAY, toolFacts } from '../../support/shop-record';

const lines = [threadLine('J-1.1', 40, 10, 20), threadLine('J-2.1', 40, 30, 40)];
const dieNeed = (
  facts: Parameters<typeof edgeNeeds>[0],
  draws = exactLives(50, { D: 50 }),
  how: 'as-here' | 'as-drawn' = 'as-here',
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
