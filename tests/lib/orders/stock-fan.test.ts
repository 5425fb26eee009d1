import { expect, it } from 'vitest';
import { partProposals } from '@/lib/orders/order-proposals';
import { stockFan } from '@/lib/orders/stock-fan';
import { END_TURNS, exactLives, ORDER_DIE, threadLine } from '../../support/order-shop';
import { shopRecord, toolFacts } from '../../support/shop-record';

// source: hand. 50 ends in hand, 80 asked for: 40 from day 7 to 13, 40 from day 28 to 34. Day 0: 50, day 14: 10, day 35: −30.
it('runs down with the lines, and up with the proposed order', () => {
  const facts = shopRecord({
    lines: [threadLine('J-1.1', 40, 7, 13), threadLine('J-2.1', 40, 28, 34)],
    tools: [toolFacts({ id: 'D', role: 'die' })],
  });
  const draws = exactLives(50, { D: 50 });
  const proposal = partProposals(facts, draws, 42).find(({ part }) => part.id === ORDER_DIE.id);
  if (proposal === undefined) throw new Error('the die has a proposal');
  const fan = stockFan(facts, draws, proposal, END_TURNS);
  expect(fan.days).toEqual([0, 7, 14, 21, 28, 35, 42]);
  const rounded = (list: readonly number[]) => list.map((ends) => Math.round(ends));
  expect(rounded(fan.mid)).toEqual([50, 50, 10, 10, 10, -30, -30]);
  expect(rounded(fan.low)).toEqual(rounded(fan.high));
  expect(fan.midWithOrder?.at(-1)).toBeCloseTo(20, 6);
  expect(fan.low.every((low, i) => low <= (fan.high[i] ?? 0))).toBe(true);
});
