import { expect, it } from 'vitest';
import { longRunRates, ratesAtAge } from '@/lib/replacement/long-run-rates';
import { costRate, weibullReplacementAge } from '@/lib/replacement/weibull-age';

const life = (shape: number, scale: number, draws = 64) => ({
  shape: new Float64Array(draws).fill(shape),
  scale: new Float64Array(draws).fill(scale),
  incidentRate: new Float64Array(draws),
});
const costs = { plannedCost: 1, failureCost: 4 };

// source: formula. Barlow and Hunter's cost rate at an age and when run to wear-out; 1 in 10 000 for the quadrature.
it.each([30, 90, null])('is the cost rate at age %s', (age) => {
  const [rate] = ratesAtAge(life(2.5, 100), age, costs);
  expect((rate ?? 0) / costRate({ shape: 2.5, scale: 100 }, costs, age ?? Infinity)).toBeCloseTo(1, 4);
});

// source: formula. At the best age it is the least rate of a known life.
it('is the least rate at the best age', () => {
  const [rate] = longRunRates(life(2.5, 100), costs, 16);
  expect((rate ?? 0) / weibullReplacementAge({ shape: 2.5, scale: 100 }, costs).costRate).toBeCloseTo(1, 4);
});
