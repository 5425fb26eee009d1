import { expect, it } from 'vitest';
import { residualAtHazard } from '@/lib/life/weibull';
import { stratifiedExponentials } from '@/lib/numeric/random-stream';
import { toolReplacement } from '@/lib/replacement/tool-age';
import { weibullReplacementAge } from '@/lib/replacement/weibull-age';

const DRAWS = 2048;
const life = { shape: 2, scale: 1000 };
const costs = { plannedCost: 1, failureCost: 3 };
const best = weibullReplacementAge(life, costs);
const rates = new Float64Array(DRAWS).fill(best.costRate);
const residual = (age: number) =>
  stratifiedExponentials(`age ${age}`, DRAWS).map((hazard) => residualAtHazard(life, { age, hazard }));

// source: formula. Of a known life an edge of age X is changed at the cost-optimal age: T − X more, none beyond it. 2 % for the draws.
it.each([0, 200, 400, 600])('leaves an edge of age %d what the best age leaves it', (age) => {
  const { moreExposure } = toolReplacement(residual(age), rates, costs);
  expect(Math.abs((moreExposure ?? 0) - ((best.age ?? 0) - age))).toBeLessThan(0.02 * (best.age ?? 0));
});

// source: formula. Past the best age it is changed at once; the share that goes before is F of what is left.
it('changes an old edge at once, and says how likely it goes before', () => {
  expect(toolReplacement(residual(1500), rates, costs)).toEqual({ moreExposure: 0, wearsOutFirst: 0 });
  const { moreExposure, wearsOutFirst } = toolReplacement(residual(0), rates, costs);
  expect(wearsOutFirst).toBeCloseTo(-Math.expm1(-(((moreExposure ?? 0) / 1000) ** 2)), 2);
});

// source: hand. A failure that costs no more: run it.
it('runs an edge to wear-out where a failure costs no more', () => {
  expect(toolReplacement(residual(0), rates, { plannedCost: 3, failureCost: 3 }).moreExposure).toBeNull();
});
