import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type BuyProblem, buyPlan } from '@/lib/lot-size/buy-plan';
import { orderableQuantity, plainTerms, purchaseCost } from '@/lib/lot-size/purchase-cost';
import { inPeriod, wagnerWhitin } from '@/lib/lot-size/wagner-whitin';

// source: published. Wagner and Whitin (1958), Table 1: packs of one, one price of nothing, no shelf life.
it('is the problem of 1958 where nothing is in the way', () => {
  const plan = buyPlan({
    demand: [69, 29, 36, 61, 61, 26, 34, 67, 45, 67, 79, 56],
    orderCost: [85, 102, 102, 101, 98, 114, 105, 86, 119, 110, 98, 114],
    holdingCost: 1,
    terms: plainTerms(0),
  });
  expect(plan.cost).toBe(864);
  expect(plan.quantities).toEqual([98, 0, 97, 0, 121, 0, 0, 112, 0, 67, 135, 0]);
});

// source: hand. Three dies needed, 100 each, or 55 each from five on, order 10: three cost 310, five 285.
it('buys more where the break pays for it', () => {
  const terms = { ...plainTerms(100), priceBreaks: [{ fromQuantity: 5, priceMinor: 55 }] };
  expect(buyPlan({ demand: [3], orderCost: 10, holdingCost: 0, terms })).toEqual({
    quantities: [5],
    cost: 285,
  });
});

// source: hand. Two a week for three weeks at 10; it keeps two weeks, an order costs 100: two orders and one carried over,
// 200 + 60 + 2; keeping for ever: one order.
it('does not buy what will be out of date', () => {
  const problem = { demand: [2, 2, 2], orderCost: 100, holdingCost: 1, terms: plainTerms(10) };
  expect(buyPlan({ ...problem, shelfLifePeriods: 2 }).cost).toBe(262);
  expect(buyPlan(problem)).toEqual({ quantities: [6, 0, 0], cost: 166 });
});

/** Every sequence of orderable quantities, tried out, each piece with its age, the oldest used first. */
function tryAll(problem: BuyProblem): number {
  const { demand, orderCost, holdingCost, terms, shelfLifePeriods = 99, openingStock = 0 } = problem;
  const most = Math.max(
    demand.reduce((sum, units) => sum + units, 0),
    ...terms.priceBreaks.map(({ fromQuantity }) => fromQuantity),
  );
  const lots = new Set([0, ...Array.from({ length: most }, (_, i) => orderableQuantity(terms, i + 1))]);
  /** `ages`: pieces by the last period in which each may be used. */
  const walk = (t: number, ages: readonly number[]): number => {
    if (t === demand.length) return 0;
    let best = Number.POSITIVE_INFINITY;
    for (const lot of lots) {
      const fresh = Array.from({ length: lot }, () => t + shelfLifePeriods - 1);
      const shelf = [...ages, ...fresh].filter((last) => last >= t);
      const left = shelf.slice(demand[t]);
      if (shelf.length < (demand[t] ?? 0)) continue;
      const useful = usable(left, t + 1, demand);
      const price = lot === 0 ? 0 : inPeriod(orderCost, t) + purchaseCost(terms, lot);
      best = Math.min(best, price + inPeriod(holdingCost, t) * useful.length + walk(t + 1, useful));
    }
    return best;
  };
  return walk(
    0,
    usable(
      Array.from({ length: openingStock }, () => shelfLifePeriods - 1),
      0,
      demand,
    ),
  );
}

/** Of pieces in order of age, those that will be used before they are out of date. */
function usable(shelf: readonly number[], from: number, demand: readonly number[]): number[] {
  const kept: number[] = [];
  let t = from;
  let left = demand[t] ?? 0;
  for (const last of shelf) {
    while (left === 0 && t < demand.length) left = demand[++t] ?? 0;
    if (t >= demand.length || last < t) continue;
    kept.push(last);
    left--;
  }
  return kept;
}

// source: identity. Against every sequence of orders there is, on short horizons, each piece with its age.
it('is never beaten', () => {
  const problems = fc.record({
    demand: fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 1, maxLength: 4 }),
    orderCost: fc.integer({ min: 0, max: 60 }),
    holdingCost: fc.integer({ min: 0, max: 9 }),
    shelfLifePeriods: fc.integer({ min: 1, max: 4 }),
    terms: fc.record({
      unitPrice: fc.integer({ min: 5, max: 40 }),
      breakKind: fc.constantFrom('all-units' as const, 'incremental' as const),
      priceBreaks: fc.constantFrom(
        [],
        [{ fromQuantity: 4, priceMinor: 4 }],
        [
          { fromQuantity: 2, priceMinor: 5 },
          { fromQuantity: 6, priceMinor: 3 },
        ],
      ),
      packSize: fc.integer({ min: 1, max: 3 }),
      minQuantity: fc.integer({ min: 1, max: 4 }),
    }),
  });
  fc.assert(
    fc.property(problems, (problem) => {
      const plan = buyPlan(problem);
      expect(plan.cost).toBeCloseTo(tryAll(problem), 9);
      expect(
        plan.quantities.every(
          (q) => q === 0 || (q >= problem.terms.minQuantity && q % problem.terms.packSize === 0),
        ),
      ).toBe(true);
    }),
    { numRuns: 150 },
  );
});

it('agrees with Wagner and Whitin for whole units at one price', () => {
  const demand = fc.array(fc.integer({ min: 0, max: 25 }), { minLength: 1, maxLength: 10 });
  fc.assert(
    fc.property(demand, fc.nat(200), fc.nat(6), (units, orderCost, holdingCost) => {
      const problem = { demand: units, orderCost, holdingCost, unitCost: 7 };
      expect(buyPlan({ ...problem, terms: plainTerms(7) }).cost).toBeCloseTo(wagnerWhitin(problem).cost, 9);
    }),
  );
});

// source: hand. A break at a hundred thousand pieces is no reason to buy them for 52, and none to try every figure up to it: one
// order of 52 at 100 each, and 10,000 for placing it.
it('a price break far away is looked at, and no figure on the way to it', () => {
  const priceBreaks = [{ fromQuantity: 100_000, priceMinor: 1 }];
  const problem = { demand: Array.from({ length: 52 }, () => 1), orderCost: 10_000, holdingCost: 0 };
  const startedMs = performance.now();
  const plan = buyPlan({ ...problem, terms: { ...plainTerms(100), priceBreaks } });
  expect(plan.quantities).toEqual([52, ...Array.from({ length: 51 }, () => 0)]);
  expect(plan.cost).toBe(15_200);
  expect(performance.now() - startedMs).toBeLessThan(1500);
});
