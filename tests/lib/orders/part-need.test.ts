import { expect, it } from 'vitest';
import { pieceBand, piecesToSuffice, piecesWithin, stockOutBy } from '@/lib/orders/part-need';

const NEVER = Number.POSITIVE_INFINITY;
/** Ten draws that need 0, 0, 1, 1, 1, 1, 1, 2, 2, 3 pieces, the first on day 5, the next on day 15, the third on day 40. */
const COUNTS = [0, 0, 1, 1, 1, 1, 1, 2, 2, 3];
const need = {
  partId: 'die',
  drawCount: 10,
  needDays: [5, 15, 40].map((day, n) => Float64Array.from(COUNTS, (count) => (count > n ? day : NEVER))),
};

// source: hand. Counted off the list.
it('counts over the draws', () => {
  expect([...piecesWithin(need, 60)]).toEqual(COUNTS);
  expect([...piecesWithin(need, 20)]).toEqual([0, 0, 1, 1, 1, 1, 1, 2, 2, 2]);
  expect(stockOutBy(need, 60, 4)).toEqual([0.8, 0.3, 0.1, 0, 0]);
  expect([
    piecesToSuffice(need, 60, 0.7),
    piecesToSuffice(need, 60, 0.9),
    piecesToSuffice(need, 60, 0.95),
  ]).toEqual([1, 2, 3]);
  expect(pieceBand(need, 60)).toEqual({ low: 0, median: 1, high: 2 });
});

it('refuses a level that is none', () => {
  expect(() => piecesToSuffice(need, 60, 1)).toThrow('piecesToSuffice');
});
