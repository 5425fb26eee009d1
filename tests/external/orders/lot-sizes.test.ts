import { expect, it } from 'vitest';
import { economicOrderQuantity, orderingCost } from '@/lib/lot-size/eoq';
import { allUnitsLot, type DiscountProblem, incrementalLot } from '@/lib/lot-size/quantity-discount';
import { silverMeal } from '@/lib/lot-size/silver-meal';
import { wagnerWhitin } from '@/lib/lot-size/wagner-whitin';
import { relativeMiss } from '@/tests/support/relative-miss';

/** Lots by the period in which they are ordered, periods counted from 1 as the books do. */
function byPeriod(quantities: readonly number[]): Record<string, number> {
  return Object.fromEntries(quantities.flatMap((lot, t) => (lot > 0 ? [[String(t + 1), lot]] : [])));
}

const tiers = (froms: readonly number[], costs: readonly number[]) =>
  froms.map((from, i) => ({ from, unitCost: costs[i] ?? 0 }));

// source: published. Case F.ww1958: H. M. Wagner and T. M. Whitin, Management Science 5 (1958), 89–96, Table 1; its data from
// memory, but all twelve remembered F(t) come out of them.
it('F.ww1958: the twelve months', () => {
  const plan = wagnerWhitin({
    demand: [69, 29, 36, 61, 61, 26, 34, 67, 45, 67, 79, 56],
    orderCost: [85, 102, 102, 101, 98, 114, 105, 86, 119, 110, 98, 114],
    holdingCost: 1,
  });
  expect(plan.cost).toBe(864);
  expect(plan.costThrough).toEqual([85, 114, 186, 277, 348, 400, 469, 555, 600, 710, 789, 864]);
  expect(byPeriod(plan.quantities)).toEqual({ '1': 98, '3': 97, '5': 121, '8': 112, '10': 67, '11': 135 });
});

// source: published. Case F.ww.ex3.9: Snyder and Shen, Fundamentals of Supply Chain Theory, 2nd ed., Example 3.9.
it('F.ww.ex3.9: four periods', () => {
  const plan = wagnerWhitin({ demand: [90, 120, 80, 70], orderCost: 500, holdingCost: 2 });
  expect(plan.cost).toBeCloseTo(1380, 9);
  expect(byPeriod(plan.quantities)).toEqual({ '1': 210, '3': 150 });
});

// source: published. Case F.ww.scmo_c: Snyder and Shen, Fundamentals of Supply Chain Theory, 2nd ed., as tested in the
// authors’ open library of stock models; prices that differ by period.
it('F.ww.scmo_c: prices by period', () => {
  const plan = wagnerWhitin({
    ...{ demand: [400, 500, 500, 1100, 900], orderCost: 100, holdingCost: 0.1 },
    unitCost: [3, 1, 4, 6, 6],
  });
  expect(plan.cost).toBeCloseTo(4940, 9);
  expect(byPeriod(plan.quantities)).toEqual({ '1': 400, '2': 3000 });
});

// source: published. Case F.silvermeal: Nahmias, Production and Operations Analysis, the machine shop.
it('F.silvermeal: the machine shop', () => {
  const plan = silverMeal({ demand: [18, 30, 42, 5, 20], orderCost: 80, holdingCost: 2 });
  expect(plan.quantities).toEqual([48, 0, 47, 0, 20]);
  [
    [80, 70, 102.67],
    [80, 45, 56.67],
  ].forEach((averages, lot) => {
    averages.forEach((average, i) => {
      expect(Math.abs((plan.averageCosts[lot]?.[i] ?? Number.NaN) - average)).toBeLessThan(0.005);
    });
  });
  // source: identity. Its cost is the least there is; Wagner and Whitin’s method finds another plan of the same cost.
  expect(wagnerWhitin({ demand: [18, 30, 42, 5, 20], orderCost: 80, holdingCost: 2 }).cost).toBe(plan.cost);
});

// source: published. Case F.eoq.3.1: Snyder and Shen, Fundamentals of Supply Chain Theory, 2nd ed., Example 3.1.
it('F.eoq.3.1: the economic lot', () => {
  const steady = { demand: 1300, orderCost: 8, holdingCost: 0.225 };
  const best = economicOrderQuantity(steady);
  expect(relativeMiss(best.quantity, 304.0467800264368)).toBeLessThan(1e-12);
  expect(relativeMiss(best.cost, 68.41052550594827)).toBeLessThan(1e-12);
  expect(relativeMiss(orderingCost(steady, 250), 69.725)).toBeLessThan(1e-12);
});

const BOOK: DiscountProblem = {
  ...{ demand: 1300, orderCost: 8, holdingRate: 0.3 },
  tiers: tiers([0, 400, 800], [0.75, 0.72, 0.68]),
};

// source: published. Case F.eoq.allunits: Snyder and Shen, Fundamentals of Supply Chain Theory, 2nd ed., Examples 3.5 and 3.6.
it('F.eoq.allunits: one price for every unit', () => {
  const lot = allUnitsLot(BOOK);
  expect(lot).toMatchObject({ quantity: 800, tier: 2 });
  expect(lot.cost).toBeCloseTo(978.6, 9);
});

// source: other-software. Case F.eoq.allunits2: worked example of the open library of stock models by the authors of
// Snyder and Shen, Fundamentals of Supply Chain Theory, 2nd ed.
it('F.eoq.allunits2: a dear part', () => {
  const lot = allUnitsLot({
    ...{ demand: 1000, orderCost: 200, holdingRate: 0.2 },
    tiers: tiers([0, 200, 500], [500, 475, 450]),
  });
  expect(lot.quantity).toBe(500);
  expect(lot.cost).toBeCloseTo(472_900, 6);
});

// source: published. Case F.eoq.incremental: Snyder and Shen, Fundamentals of Supply Chain Theory, 2nd ed., Example 3.7 and
// Problem 3.12 (b); the third from the authors’ open library of stock models.
it.each([
  [BOOK, 304.04678003, 1043.41052551],
  [
    { demand: 182500, orderCost: 2250, holdingRate: 0.25, tiers: tiers([0, 1200, 2400], [1490, 1220, 1100]) },
    28553.06065428,
    208678591.67992836,
  ],
  [
    { demand: 2400, orderCost: 150, holdingRate: 0.25, tiers: tiers([0, 300, 600], [100, 90, 80]) },
    1481.8906842274164,
    222762.8136845483,
  ],
] as const)('F.eoq.incremental: case %#', (problem, quantity, cost) => {
  const lot = incrementalLot(problem);
  expect(relativeMiss(lot.quantity, quantity)).toBeLessThan(1e-9);
  expect(relativeMiss(lot.cost, cost)).toBeLessThan(1e-9);
});

// source: published. Case F.eoq.stevenson: the hospital’s cleaner (Stevenson, Operations Management; attribution from memory),
// lots in whole cases.
it('F.eoq.stevenson: a price list with a fixed cost of keeping', () => {
  const steady = { demand: 816, orderCost: 12, holdingCost: 4 };
  expect(Math.abs(economicOrderQuantity(steady).quantity - 70)).toBeLessThan(0.6);
  const lot = allUnitsLot({ ...steady, tiers: tiers([1, 50, 80, 100], [20, 18, 17, 16]) });
  expect(lot.quantity).toBe(100);
  const total = (quantity: number, price: number) => orderingCost(steady, quantity) + 816 * price;
  expect(Math.abs(total(70, 18) - 14_968)).toBeLessThan(0.6);
  expect(Math.abs(total(80, 17) - 14_154)).toBeLessThan(0.6);
  expect(Math.abs(total(100, 16) - 13_354)).toBeLessThan(0.6);
  expect(lot.cost).toBeCloseTo(total(100, 16), 9);
});
