import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  poissonCdf,
  poissonLoss,
  poissonProbability,
  poissonQuantile,
  poissonStock,
} from '@/lib/stock/poisson-stock';

// source: other-software. SciPy, scipy.stats.poisson.cdf.
it.each([
  [0.5, [0.6065306597126334, 0.9097959895689501, 0.9856123220330293, 0.9982483774437092]],
  [1.5, [0.22313016014842982, 0.5578254003710748, 0.8088468305380582, 0.9343575456215499]],
  [3, [0.04978706836786395, 0.1991482734714558, 0.42319008112684364, 0.6472318887822313]],
])('mean %f', (mean, expected) => {
  for (const [k, value] of expected.entries())
    expect(Math.abs(poissonCdf(mean, k) - value)).toBeLessThan(1e-12);
});

// source: other-software. SciPy, scipy.stats.poisson.ppf.
it.each([
  [0.5, 0.9, 1],
  [0.5, 0.99, 3],
  [1, 0.95, 3],
  [3, 0.99, 8],
  [5, 0.99, 11],
  [9, 0.95, 14],
])('mean %f at service %f takes %i', (mean, service, pieces) => {
  const found = poissonStock(mean, service);
  expect(found.pieces).toBe(pieces);
  expect(found.probability).toBe(poissonCdf(mean, pieces));
  expect(poissonQuantile(mean, service)).toBe(pieces);
});

// source: formula. The worked lead-time demands of the trade notes: mean 0.66 dies, 1 on hand covers 86 %, 2 cover 97 %;
// three weeks more (mean 0.98) and 2 cover 92 %, 3 cover 98 %.
it('covers a slow die as worked by hand', () => {
  const percent = (mean: number, k: number) => Math.round(100 * poissonCdf(mean, k));
  expect([percent(0.66, 1), percent(0.66, 2), percent(0.98, 2), percent(0.98, 3)]).toEqual([86, 97, 92, 98]);
});

// source: identity. Probabilities add up to the distribution; the loss is what a sum over the tail gives.
it('adds up', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 20, noNaN: true }), fc.nat(12), (mean, k) => {
      let sum = 0;
      let short = 0;
      for (let n = 0; n < 120; n++) {
        if (n <= k) sum += poissonProbability(mean, n);
        short += Math.max(0, n - k) * poissonProbability(mean, n);
      }
      expect(poissonCdf(mean, k)).toBeCloseTo(sum, 11);
      expect(poissonLoss(mean, k)).toBeCloseTo(short, 9);
    }),
  );
  expect([poissonCdf(0, 0), poissonCdf(2, -1), poissonProbability(1, -1), poissonProbability(0, 0)]).toEqual([
    1, 0, 0, 1,
  ]);
});
