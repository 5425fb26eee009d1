import { expect, it } from 'vitest';
import { guessBelief } from '@/lib/life/guess-belief';
import { layOut } from '@/lib/life/parameter-layout';
import { defaultLifePriors } from '@/lib/life/priors';
import { normalQuantile } from '@/lib/numeric/normal';

const PRIORS = defaultLifePriors('die', { referenceMaterialId: 'ref', materials: [] });
const TYPED = { partId: 'die-38', odIn: 0.75, lifeBase: 1300, factor: 2 };

// source: formula. The figure 0.7 of the squared error is shared: sd² = shared² + own².
it('splits a guess into a shared and an own error', () => {
  const layout = layOut([], [TYPED], PRIORS);
  const belief = guessBelief(TYPED, layout, PRIORS);
  const shared = belief.form.coefficients[belief.form.indices.indexOf(layout.indexOf.guessError ?? -1)] ?? 0;
  expect(Math.abs(Math.hypot(shared, belief.sd) - Math.LN2 / normalQuantile(0.9))).toBeLessThan(1e-14);
  expect(Math.abs(shared ** 2 / (shared ** 2 + belief.sd ** 2) - 0.7)).toBeLessThan(1e-14);
});

// source: formula. ln 1300 is believed of logMedian + ln 2·sizeExponent + part.
it('is about the median of its own part and size', () => {
  const layout = layOut([], [TYPED], PRIORS);
  const { form, mean } = guessBelief(TYPED, layout, PRIORS);
  const weight = (name: string): number =>
    form.coefficients[form.indices.indexOf(layout.indexOf[name] ?? -1)] ?? 0;
  expect([weight('logMedian'), weight('part:die-38'), weight('regrind')]).toEqual([1, 1, 0]);
  expect(Math.abs(weight('sizeExponent') - Math.LN2)).toBeLessThan(1e-15);
  expect(mean).toBe(Math.log(1300));
});
