import { expect, it } from 'vitest';
import { specificRisk } from '@/lib/gauge/conformity';
import { guardBandOf } from '@/lib/gauge/decision-rule';
import { DEFAULT_GAUGE_SETTINGS } from '@/lib/gauge/default-gauge-settings';

// source: published. ISO 14253-1:2017, from memory: conformity is proven with 95 % unless agreed otherwise; what is accepted
// at the edge of the guard band is out with a chance of 5 %.
it('starts from 95 % in both', () => {
  const { decisionRule, targetReliability } = DEFAULT_GAUGE_SETTINGS;
  expect(targetReliability).toBe(0.95);
  const band = guardBandOf(decisionRule, { error: 0, expandedUncertainty: 2, coverageFactor: 2 });
  expect(specificRisk(band)).toBeCloseTo(0.05, 10);
});
