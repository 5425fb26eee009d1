import fc from 'fast-check';
import { expect, it } from 'vitest';
import { allUnitsLot, type DiscountProblem, incrementalLot } from '@/lib/lot-size/quantity-discount';
import { relativeMiss } from '@/tests/support/relative-miss';

const tiers = (froms: readonly number[], costs: readonly number[]) =>
  froms.map((from, i) => ({ from, unitCost: costs[i] ?? 0 }));
const BOOK = {
  demand: 1300,
  orderCost: 8,
  holdingRate: 0.3,
  tiers: tiers([0, 400, 800], [0.75, 0.72, 0.68]),
};

// source: published. Snyder and Shen, Fundamentals of Supply Chain Theory, 2nd ed., Examples 3.5 and 3.6, and their library.
it('one price for all units', () => {
  expect(allUnitsLot(BOOK)).toMatchObject({ quantity: 800, tier: 2, cost: expect.closeTo(978.6, 9) });
  const other = {
    demand: 1000,
    orderCost: 200,
    holdingRate: 0.2,
    tiers: tiers([0, 200, 500], [500, 475, 450]),
  };
  expect(allUnitsLot(other)).toMatchObject({ quantity: 500, cost: expect.closeTo(472900, 6) });
});

// source: published. Stevenson, Operations Management (from a worked page): 816 cases, order 12, keeping 4 a case.
it('keeping at a fixed sum a unit', () => {
  const problem = {
    demand: 816,
    orderCost: 12,
    holdingCost: 4,
    tiers: tiers([0, 50, 80, 100], [20, 18, 17, 16]),
  };
  expect(allUnitsLot(problem).quantity).toBe(100);
  expect(Math.abs(allUnitsLot(problem).cost - 13_354)).toBeLessThan(0.6);
  const upTo79 = { ...problem, tiers: problem.tiers.slice(0, 2) };
  expect(Math.abs(allUnitsLot(upTo79).cost - 14_968)).toBeLessThan(0.6);
});

// source: published. Snyder and Shen, Example 3.7 and Problem 3.12(b), and the documentation of their library.
it.each([
  [BOOK, 304.04678003, 1043.41052551],
  [
    {
      demand: 182_500,
      orderCost: 2250,
      holdingRate: 0.25,
      tiers: tiers([0, 1200, 2400], [1490, 1220, 1100]),
    },
    28_553.06065428,
    208_678_591.67992836,
  ],
  [
    { demand: 2400, orderCost: 150, holdingRate: 0.25, tiers: tiers([0, 300, 600], [100, 90, 80]) },
    1481.8906842274164,
    222_762.8136845483,
  ],
])('a price for the units from its break on', (problem, quantity, cost) => {
  const lot = incrementalLot(problem);
  expect(relativeMiss(lot.quantity, quantity)).toBeLessThan(1e-9);
  expect(relativeMiss(lot.cost, cost)).toBeLessThan(1e-9);
});

/** Yearly cost of a lot, straight from the price list. */
function yearly(problem: DiscountProblem, q: number, incremental: boolean): number {
  const { demand, orderCost, holdingRate = 0, tiers: list } = problem;
  const at = list.filter(({ from }) => q >= from);
  const last = at.at(-1)?.unitCost ?? 0;
  let price = q * last;
  if (incremental)
    price = at.reduce((sum, { from, unitCost }, i) => sum + unitCost * ((at[i + 1]?.from ?? q) - from), 0);
  return (demand / q) * (orderCost + price) + (holdingRate * price) / 2;
}

// source: identity. No lot of a fine grid costs less, by either rule.
it('is never beaten', () => {
  const problems = fc.record({
    demand: fc.integer({ min: 20, max: 2000 }),
    orderCost: fc.integer({ min: 1, max: 300 }),
    holdingRate: fc.double({ min: 0.05, max: 0.6, noNaN: true }),
    first: fc.integer({ min: 20, max: 300 }),
    second: fc.integer({ min: 20, max: 300 }),
  });
  fc.assert(
    fc.property(problems, ({ first, second, ...rest }) => {
      const problem = { ...rest, tiers: tiers([0, first, first + second], [10, 9, 7.5]) };
      const [all, incremental] = [allUnitsLot(problem), incrementalLot(problem)];
      expect(all.cost).toBeCloseTo(yearly(problem, all.quantity, false), 6);
      expect(incremental.cost).toBeCloseTo(yearly(problem, incremental.quantity, true), 6);
      for (let q = 1; q < 1500; q += 7) {
        expect(all.cost).toBeLessThanOrEqual(yearly(problem, q, false) + 1e-6);
        expect(incremental.cost).toBeLessThanOrEqual(yearly(problem, q, true) + 1e-6);
      }
    }),
    { numRuns: 40 },
  );
});

// source: identity. A price list that says "from 1" and one that says "from 0" are the same list: every order begins with
// its first unit.
it('a list from 1 is a list from 0', () => {
  const prices = [100, 90, 80];
  const problem = { demand: 2400, orderCost: 150, holdingRate: 0.25 };
  const [from0, from1] = [0, 1].map((first) => ({ ...problem, tiers: tiers([first, 300, 600], prices) }));
  for (const lot of [allUnitsLot, incrementalLot])
    expect(lot(from1 as DiscountProblem)).toEqual(lot(from0 as DiscountProblem));
});
