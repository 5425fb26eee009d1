import fc from 'fast-check';
import { expect, it } from 'vitest';
import { costRate, meanCycle, weibullReplacementAge } from '@/lib/replacement/weibull-age';
import ages from '../../fixtures/replacement/ages.json';

// source: other-software. mpmath in 40 digits, tests/fixtures/replacement/generate.py; 1e-9 and 1e-12 are what the project asks.
it.each(ages.wearOnly)('shape $shape at a cost ratio of $ratio agrees with mpmath', (known) => {
  const found = weibullReplacementAge(
    { shape: known.shape, scale: 250 },
    { plannedCost: 4, failureCost: 4 * known.ratio },
  );
  expect(Math.abs((found.age ?? 0) / (250 * known.age) - 1)).toBeLessThan(1e-9);
  expect(Math.abs(found.costRate / ((4 * known.costRate) / 250) - 1)).toBeLessThan(1e-12);
});

const life = fc.record({
  shape: fc.double({ min: 0.5, max: 10, noNaN: true }),
  scale: fc.double({ min: 1, max: 1e5, noNaN: true }),
});

// source: identity. A minimum is no dearer than any other age, nor than running to wear-out.
it('no other age is cheaper', () => {
  fc.assert(
    fc.property(
      life,
      fc.double({ min: 1.01, max: 1000, noNaN: true }),
      fc.double({ min: 0.01, max: 4, noNaN: true }),
      (edge, ratio, share) => {
        const costs = { plannedCost: 1, failureCost: ratio };
        const found = weibullReplacementAge(edge, costs);
        expect(found.costRate).toBeLessThanOrEqual(costRate(edge, costs, share * edge.scale) * (1 + 1e-12));
        expect(found.costRate).toBeLessThanOrEqual(found.runCostRate);
        expect(found.age === null).toBe(found.runReason !== null);
      },
    ),
  );
});

// source: identity. A dearer failure never makes one wait longer.
it('a dearer failure brings the change forward', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1.2, max: 10, noNaN: true }),
      fc.double({ min: 2, max: 500, noNaN: true }),
      (shape, ratio) => {
        const at = (failureCost: number) =>
          weibullReplacementAge({ shape, scale: 1 }, { plannedCost: 1, failureCost }).age ?? Infinity;
        expect(at(ratio * 1.5)).toBeLessThan(at(ratio));
      },
    ),
  );
});

// source: formula. An exponential life: ∫₀ᵗ e^(−u) du = 1 − e^(−t); C is the same at every age where c_p is nothing against c_f.
it('knows the mean cycle of a life that does not age', () => {
  expect(meanCycle({ shape: 1, scale: 1 }, 2)).toBeCloseTo(-Math.expm1(-2), 14);
  expect(weibullReplacementAge({ shape: 0.9, scale: 1 }, { plannedCost: 1, failureCost: 50 }).runReason).toBe(
    'does-not-age',
  );
  expect(weibullReplacementAge({ shape: 3, scale: 1 }, { plannedCost: 5, failureCost: 5 }).runReason).toBe(
    'failure-costs-no-more',
  );
});
