import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inPeriod, type LotProblem, wagnerWhitin } from '@/lib/lot-size/wagner-whitin';

// source: published. H. M. Wagner and T. M. Whitin, Management Science 5 (1958), Table 1 (data from memory, all twelve F(t)).
it('the twelve months of 1958', () => {
  const plan = wagnerWhitin({
    demand: [69, 29, 36, 61, 61, 26, 34, 67, 45, 67, 79, 56],
    orderCost: [85, 102, 102, 101, 98, 114, 105, 86, 119, 110, 98, 114],
    holdingCost: 1,
  });
  expect(plan.costThrough).toEqual([85, 114, 186, 277, 348, 400, 469, 555, 600, 710, 789, 864]);
  expect(plan.quantities).toEqual([98, 0, 97, 0, 121, 0, 0, 112, 0, 67, 135, 0]);
});

// source: published. Snyder and Shen, Fundamentals of Supply Chain Theory, 2nd ed., Example 3.9.
it('four periods at one cost', () => {
  expect(wagnerWhitin({ demand: [90, 120, 80, 70], orderCost: 500, holdingCost: 2 })).toMatchObject({
    cost: 1380,
    quantities: [210, 0, 150, 0],
  });
});

// source: published. The test set of the same authors’ open library: a price that moves from period to period.
it('a price that changes', () => {
  const problem = {
    demand: [400, 500, 500, 1100, 900],
    orderCost: 100,
    holdingCost: 0.1,
    unitCost: [3, 1, 4, 6, 6],
  };
  const plan = wagnerWhitin(problem);
  expect(plan.cost).toBeCloseTo(4940, 9);
  expect(plan.quantities).toEqual([400, 3000, 0, 0, 0]);
});

/** Every way of covering the weeks, tried out: an order in each week of a subset, each covering until the next. */
function tryAll({ demand, orderCost, holdingCost, unitCost = 0 }: LotProblem): number {
  let best = Number.POSITIVE_INFINITY;
  for (let mask = 0; mask < 2 ** demand.length; mask++) {
    let cost = 0;
    let from = -1;
    demand.forEach((units, t) => {
      if ((mask >> t) & 1) {
        from = t;
        cost += inPeriod(orderCost, t);
      }
      if (units === 0) return;
      if (from < 0) cost = Number.POSITIVE_INFINITY;
      else cost += inPeriod(unitCost, from) * units;
      for (let u = Math.max(from, 0); u < t; u++) cost += inPeriod(holdingCost, u) * units;
    });
    best = Math.min(best, cost);
  }
  return best;
}

// source: identity. Against every plan there is, on short horizons.
it('is never beaten', () => {
  const figure = fc.integer({ min: 0, max: 30 });
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 7 }).chain((n) => {
        const list = fc.array(figure, { minLength: n, maxLength: n });
        return fc.record({ demand: list, orderCost: list, holdingCost: list, unitCost: list });
      }),
      (problem) => {
        const plan = wagnerWhitin(problem);
        expect(plan.cost).toBeCloseTo(tryAll(problem), 9);
        const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
        expect(sum(plan.quantities)).toBe(sum(problem.demand));
      },
    ),
  );
  expect(wagnerWhitin({ demand: [], orderCost: 1, holdingCost: 1 }).cost).toBe(0);
});

// source: formula. One unit a period, ordering at K, keeping at 1: an order for m periods costs K + m(m − 1)/2, so with
// K = 50 ten periods are the best span (√(2·50) = 10) and 3000 of them cost 300 · (50 + 45). A horizon of years is no trouble.
it('three thousand periods take a moment', () => {
  const demand = Array.from({ length: 3000 }, () => 1);
  const startedMs = performance.now();
  expect(wagnerWhitin({ demand, orderCost: 50, holdingCost: 1 }).cost).toBe(300 * 95);
  expect(performance.now() - startedMs).toBeLessThan(3000);
});

it('refuses demand that is none', () => {
  for (const demand of [[1, Number.NaN], [-1], [Number.POSITIVE_INFINITY]])
    expect(() => wagnerWhitin({ demand, orderCost: 1, holdingCost: 1 })).toThrow(/0 or more/);
});
