import { expect, it } from 'vitest';
import { incidentRateDraws, incidentRateOf, updateRate } from '@/lib/ensemble/incident-rate';
import { relativeMiss } from '@/tests/support/relative-miss';
import { fitted, HISTORIES } from '@/tests/support/small-shop';

// source: formula. Conjugate gamma: shapes and exposures add up.
it('adds the incidents of the log to the weak prior', () => {
  expect(updateRate({ shape: 2, rate: 1400 }, { events: 2, exposure: 1909 })).toEqual({
    shape: 4,
    rate: 3309,
  });
  const fit = fitted(HISTORIES);
  const belief = incidentRateOf(fit);
  expect(belief.shape).toBe(1.5);
  expect(relativeMiss(belief.rate, 0.5 * 20 * Math.exp(fit.mode.logMedian ?? 0) + fit.exposure)).toBeLessThan(
    1e-14,
  );
});

// source: formula. Mean of a gamma figure, shape/rate; stratified draws miss it by far less than their standard error.
it('draws rates whose mean is that of the belief', () => {
  const fit = fitted(HISTORIES);
  const { shape, rate } = incidentRateOf(fit);
  const draws = incidentRateDraws(fit, 2048);
  expect(draws.every((value) => value > 0)).toBe(true);
  expect(relativeMiss(draws.reduce((sum, value) => sum + value, 0) / 2048, shape / rate)).toBeLessThan(0.002);
});

it('knows of more incidents after more incidents', () => {
  const dropped = HISTORIES.map((history, i) => (i < 3 ? { ...history, end: 'incident' as const } : history));
  const mean = (histories: typeof HISTORIES): number => {
    const { shape, rate } = incidentRateOf(fitted(histories));
    return shape / rate;
  };
  expect(mean(dropped)).toBeGreaterThan(1.5 * mean(HISTORIES));
});
