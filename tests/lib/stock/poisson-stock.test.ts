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

// source: other-software. SciPy 1.10, scipy.stats.poisson.ppf. Beyond a mean of 745 the chance of nothing at all is too small
// for a double.
it.each([
  [745.5, 0.25, 727],
  [750, 0.001, 667],
  [1000, 0.5, 1000],
  [1000, 0.999, 1099],
  [1_000_000, 0.9, 1_001_282],
  [1_000_000, 0.95, 1_001_645],
])('a mean of %f at %f takes %i, and takes no time', (mean, chance, pieces) => {
  expect(poissonQuantile(mean, chance)).toBe(pieces);
  expect(poissonStock(mean, chance).pieces).toBe(pieces);
});

// source: identity. The smallest figure that reaches the chance, however near to 1 that is.
it('is the smallest figure that reaches a chance', () => {
  const below1 = 1 - Number.EPSILON / 2;
  for (const mean of [0, 0.3, 20, 499, 501])
    for (const chance of [0, 1e-9, 0.5, 0.999999]) {
      const k = poissonQuantile(mean, chance);
      expect(poissonCdf(mean, k)).toBeGreaterThanOrEqual(chance - 1e-12);
      if (k > 0) expect(poissonCdf(mean, k - 1)).toBeLessThan(chance + 1e-12);
    }
  expect(poissonQuantile(20, below1)).toBeLessThan(100);
  for (const chance of [1, Number.NaN, -0.1]) expect(() => poissonQuantile(1, chance)).toThrow();
});

// source: identity. Half a piece on the shelf helps nobody more: between whole pieces the loss falls in a straight line
// (E[(N − s)⁺] is linear there), and far out it is nothing, not less.
it('the loss runs straight between whole pieces, and is never below 0', () => {
  for (const mean of [0.4, 3, 11]) {
    const middle = (poissonLoss(mean, 2) + poissonLoss(mean, 3)) / 2;
    expect(poissonLoss(mean, 2.5)).toBeCloseTo(middle, 12);
    for (let pieces = 30; pieces < 90; pieces++) expect(poissonLoss(mean, pieces)).toBeGreaterThanOrEqual(0);
  }
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
