import { expect, it } from 'vitest';
import {
  normalDensity,
  normalLoss,
  standardNormalLeftover,
  standardNormalLoss,
} from '@/lib/stock/normal-loss';

// source: published. L. V. Snyder and Z.-J. M. Shen, Fundamentals of Supply Chain Theory, 2nd ed., as tested in the
// authors’ open library of stock models (standard normal loss and its complement).
it.each([
  [-1.4, 1.436668142708465, 0.036668142708465],
  [0.3, 0.26676124211721, 0.56676124211721],
  [3.1, 0.0002672490952231408, 3.100267249095223],
])('at z = %f', (z, loss, leftover) => {
  expect(Math.abs(standardNormalLoss(z) - loss)).toBeLessThan(1e-12);
  expect(Math.abs(standardNormalLeftover(z) - leftover)).toBeLessThan(1e-12);
});

// source: published. The same: N(8, 3) at 11 and N(15, 5) at 10.5.
it('for any mean and spread', () => {
  expect(Math.abs(normalLoss(11, { mean: 8, sd: 3 }) - 0.249946411763059)).toBeLessThan(1e-12);
  expect(Math.abs(normalLoss(10.5, { mean: 15, sd: 5 }) - 5.002155685433356)).toBeLessThan(1e-12);
  expect(normalDensity(0)).toBeCloseTo(1 / Math.sqrt(2 * Math.PI), 15);
  expect(() => normalLoss(1, { mean: 0, sd: 0 })).toThrow('normalLoss');
});
