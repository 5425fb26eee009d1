import { expect, it } from 'vitest';
import { regrindOrBuy } from '@/lib/replacement/regrind-or-buy';

/** Edges that wear out by chance alone, so that they are run: cost per unit is cost over mean life. */
const offer = (scale: number, failureCost: number) => ({
  life: { shape: Float64Array.of(1), scale: Float64Array.of(scale), incidentRate: Float64Array.of(0) },
  costs: { plannedCost: 1, failureCost },
});

// source: hand. New: 80 for 100 units. Reground: 20 for 80, then 20 for 10. 0.8 a unit, (80 + 20)/180 = 0.556 with one regrind,
// (80 + 40)/190 = 0.632 with two: one regrind, then buy.
it('regrinds as long as that lowers the cost of the blade so far', () => {
  const { bestRegrinds, edges } = regrindOrBuy([offer(100, 80), offer(80, 20), offer(10, 20)]);
  expect(bestRegrinds).toBe(1);
  expect(edges.map(({ lifeRate }) => lifeRate)).toEqual(
    [0.8, 100 / 180, 120 / 190].map((rate) => expect.closeTo(rate, 4)),
  );
  expect(edges.map(({ cheaperThanNew }) => cheaperThanNew)).toEqual([null, 1, 0]);
});

// source: hand. A regrind that costs as much as a blade and lasts half as long is not worth it.
it('buys where a regrind costs too much', () => {
  expect(regrindOrBuy([offer(100, 80), offer(50, 80)]).bestRegrinds).toBe(0);
});
