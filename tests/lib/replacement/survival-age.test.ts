import { expect, it } from 'vitest';
import { survival } from '@/lib/life/weibull';
import { survivalReplacementAge } from '@/lib/replacement/survival-age';
import { weibullReplacementAge } from '@/lib/replacement/weibull-age';

// source: identity. With a Weibull curve it is the Weibull answer; 1e-6, since a minimum is level to half the digits; 1e-8, since a curve of fractional
// power is not smooth at zero.
it.each([1.5, 2.2, 4])('agrees with the exact answer at shape %d', (shape) => {
  const life = { shape, scale: 85 };
  const costs = { plannedCost: 18, failureCost: 95 };
  const exact = weibullReplacementAge(life, costs);
  const found = survivalReplacementAge((age) => survival(life, age), costs, 85 * 40 ** (1 / shape));
  expect(Math.abs((found.age ?? 0) / (exact.age ?? 1) - 1)).toBeLessThan(1e-6);
  expect(Math.abs(found.costRate / exact.costRate - 1)).toBeLessThan(1e-8);
});

// source: hand. Half the edges fail at 10, half at 100: two valleys. Changing just before 10 costs 1/10; just before 100
// (0.5 × 1 + 0.5 × 2)/55 = 0.027: the second is the lower one and must be found.
it('finds the lower of two valleys', () => {
  const lasts = (age: number) => (age < 10 ? 1 : age < 100 ? 0.5 : 0);
  const found = survivalReplacementAge(lasts, { plannedCost: 1, failureCost: 2 }, 200);
  expect(found.age).toBeGreaterThan(95);
  expect(found.age).toBeLessThanOrEqual(100.5);
});
