import { expect, it } from 'vitest';
import { gatheredBy, LOG_LOGISTIC_STRETCH, logLogisticStep } from '@/lib/life/life-law';
import { streamOfKey } from '@/lib/numeric/random-stream';

// source: formula. Definitions: −ln of S = 1/(1 + u), and of S = e^(−H).
it.each([-40, -3, 0, 0.7, 5, 30])('gathers what survival has lost, ln u = %d', (z) => {
  expect(gatheredBy('weibull', z)).toBe(Math.exp(z));
  const expected = z > 20 ? z : -Math.log(1 / (1 + Math.exp(z)));
  expect(Math.abs(gatheredBy('log-logistic', z) - expected)).toBeLessThan(1e-9 * Math.max(1, Math.abs(z)));
});

it('does not overflow', () => {
  expect(gatheredBy('log-logistic', 900)).toBe(900);
});

// source: formula. (1 + u)·e^E = 1 + u'.
it.each([0, 0.3, 20])('steps on by a hazard from power %d', (u) => {
  const next = u + logLogisticStep(u, 0.8);
  expect(Math.log((1 + next) / (1 + u))).toBeCloseTo(0.8, 12);
});

// source: identity. Both laws scatter alike in the log life at the same shape: drawn by their quantiles.
it('has the stretch that makes the two laws scatter alike', () => {
  const random = streamOfKey('life-law.test');
  const us = Array.from({ length: 40_000 }, (_, i) => (i + random()) / 40_000);
  const sd = (values: readonly number[]): number => {
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length);
  };
  const weibull = sd(us.map((u) => Math.log(-Math.log(1 - u))));
  const logLogistic = sd(us.map((u) => Math.log(u / (1 - u)) / LOG_LOGISTIC_STRETCH));
  expect(Math.abs(weibull / logLogistic - 1)).toBeLessThan(0.005);
});
