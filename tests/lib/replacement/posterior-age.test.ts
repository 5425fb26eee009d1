import { expect, it } from 'vitest';
import { cycleCurves } from '@/lib/replacement/cycle-curves';
import { posteriorCostRate, posteriorReplacementAge } from '@/lib/replacement/posterior-age';
import ages from '../../fixtures/replacement/ages.json';

const one = (shape: number, incidentRate = 0) =>
  cycleCurves({
    shape: Float64Array.of(shape),
    scale: Float64Array.of(1),
    incidentRate: Float64Array.of(incidentRate),
  });

// source: other-software. mpmath in 40 digits, tests/fixtures/replacement/generate.py: wear and incidents side by side. The age comes
// off a grid of 192: 2 in 1000; a minimum is level, so the cost is 1e-5.
it.each(ages.withIncidents)(
  'shape $shape, ratio $ratio, incidents $incidentRate agrees with mpmath',
  (known) => {
    const costs = { plannedCost: 1, failureCost: known.ratio };
    const found = posteriorReplacementAge(one(known.shape, known.incidentRate), costs);
    expect(Math.abs(found.runCostRate / known.runCostRate - 1)).toBeLessThan(1e-5);
    expect(Math.abs(found.costRate / known.costRate - 1)).toBeLessThan(1e-5);
    expect(Math.abs((found.age ?? 0) / known.age - 1)).toBeLessThan(2e-3);
  },
);

// source: formula. Chance alone does not age: shape 1 or less, with or without incidents, is run to wear-out; so is a failure that
// costs no more than a planned change.
it('says when edges are to be run to wear-out', () => {
  const costs = { plannedCost: 1, failureCost: 20 };
  expect(posteriorReplacementAge(one(1), costs)).toMatchObject({ age: null, runReason: 'does-not-age' });
  expect(posteriorReplacementAge(one(0.7, 0.5), costs)).toMatchObject({
    age: null,
    runReason: 'does-not-age',
  });
  expect(posteriorReplacementAge(one(3), { plannedCost: 2, failureCost: 2 }).runReason).toBe(
    'failure-costs-no-more',
  );
});

// source: identity. The cost at the best age is the least of the curve, and is what the curve gives there.
it('is the lowest point of its own curve', () => {
  const curves = one(2.2, 0.1);
  const costs = { plannedCost: 18, failureCost: 95 };
  const { age, costRate } = posteriorReplacementAge(curves, costs);
  expect(posteriorCostRate(curves, costs, age ?? 1) / costRate).toBeCloseTo(1, 3);
  for (const share of [0.5, 0.8, 1.3, 2]) {
    expect(posteriorCostRate(curves, costs, (age ?? 1) * share)).toBeGreaterThan(costRate);
  }
});
