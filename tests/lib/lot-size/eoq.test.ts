import { expect, it } from 'vitest';
import { economicOrderQuantity, orderingCost } from '@/lib/lot-size/eoq';
import { relativeMiss } from '@/tests/support/relative-miss';

// source: published. Snyder and Shen, Fundamentals of Supply Chain Theory, 2nd ed., Example 3.1.
it('agrees with the worked example', () => {
  const steady = { demand: 1300, orderCost: 8, holdingCost: 0.225 };
  const best = economicOrderQuantity(steady);
  expect(relativeMiss(best.quantity, 304.0467800264368)).toBeLessThan(1e-12);
  expect(relativeMiss(best.cost, 68.41052550594827)).toBeLessThan(1e-12);
  expect(orderingCost(steady, 250)).toBeCloseTo(69.725, 10);
  // source: identity. The cost at the economic lot is the least.
  expect(orderingCost(steady, best.quantity)).toBeCloseTo(best.cost, 10);
  expect(() => orderingCost(steady, 0)).toThrow('orderingCost');
  expect(() => economicOrderQuantity({ ...steady, holdingCost: 0 })).toThrow('economicOrderQuantity');
});
