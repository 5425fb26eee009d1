import fc from 'fast-check';
import { expect, it } from 'vitest';
import { silverMeal } from '@/lib/lot-size/silver-meal';
import { wagnerWhitin } from '@/lib/lot-size/wagner-whitin';

// source: published. Nahmias, Production and Operations Analysis, machine shop example (from a worked page).
it('the machine shop', () => {
  const plan = silverMeal({ demand: [18, 30, 42, 5, 20], orderCost: 80, holdingCost: 2 });
  expect(plan.quantities).toEqual([48, 0, 47, 0, 20]);
  expect(plan.cost).toBe(310);
  expect(plan.averageCosts[0]).toEqual([80, 70, expect.closeTo(102.67, 2)]);
  expect(plan.averageCosts[1]).toEqual([80, 45, expect.closeTo(56.67, 2)]);
});

// source: identity. It meets the demand, and never costs less than the optimum.
it('meets the demand at no less than the least cost', () => {
  const demand = fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(
      demand,
      fc.integer({ min: 1, max: 200 }),
      fc.integer({ min: 1, max: 5 }),
      (units, orderCost, holdingCost) => {
        const problem = { demand: units, orderCost, holdingCost };
        const plan = silverMeal(problem);
        expect(plan.cost).toBeGreaterThanOrEqual(wagnerWhitin(problem).cost - 1e-9);
        let stock = 0;
        units.forEach((used, t) => {
          stock += (plan.quantities[t] ?? 0) - used;
          expect(stock).toBeGreaterThanOrEqual(0);
        });
        expect(stock).toBe(0);
      },
    ),
  );
});

// source: formula. The rule weighs ordering against holding (Silver and Meal 1973); what the units cost is paid once whatever
// the lots, so it moves the cost by price × demand and the lots not at all.
it('what the units cost does not move the lots', () => {
  const problem = { demand: [18, 30, 42, 5, 20], orderCost: 80, holdingCost: 2 };
  for (const unitCost of [1, 3, 50]) {
    const plan = silverMeal({ ...problem, unitCost });
    expect(plan.quantities).toEqual([48, 0, 47, 0, 20]);
    expect(plan.averageCosts).toEqual(silverMeal(problem).averageCosts);
    expect(plan.cost).toBeCloseTo(310 + 115 * unitCost, 9);
  }
});
