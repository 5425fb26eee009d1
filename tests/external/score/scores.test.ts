import { describe, expect, it } from 'vitest';
import { cdf } from '@/lib/life/weibull';
import { brierScore } from '@/lib/score/brier';
import { crpsOfWeibull } from '@/lib/score/crps';
import { ksDistance } from '@/lib/score/ks-distance';
import { wilsonInterval } from '@/lib/score/wilson';
import { relativeMiss } from '@/tests/support/relative-miss';

// source: published, from memory. scikit-learn documentation of brier_score_loss: four cases, 0.0375.
it('Brier score of the documented example', () => {
  const cases = [
    [0.1, false],
    [0.9, true],
    [0.8, true],
    [0.3, false],
  ] as const;
  const score = brierScore(cases.map(([probability, outcome]) => ({ probability, outcome })));
  expect(Math.abs(score - 0.0375)).toBeLessThan(1e-12);
});

// source: other-software. SciPy 1.x numerical integration of (F − 1[x ≥ y])² over x, to 1e-9 relative.
it.each([
  [80, 2, 100, 11.131735600095887],
  [150, 2, 100, 41.428028140794794],
  [40, 1.5, 100, 24.36219921968788],
  [100, 3.5, 120, 8.949523592462498],
])('ranked probability score of life %d under Weibull(%d, %d)', (came, shape, scale, expected) => {
  expect(relativeMiss(crpsOfWeibull({ shape, scale }, came), expected)).toBeLessThan(1e-9);
});

describe('shares below what came', () => {
  // source: formula. 1 − e^(−(y/100)²), worked with 16 digits outside this project.
  it('are the distribution function', () => {
    const life = { shape: 2, scale: 100 };
    expect(Math.abs(cdf(life, 25) - 0.06058693718652419)).toBeLessThan(1e-12);
    expect(Math.abs(cdf(life, 100) - 0.6321205588285577)).toBeLessThan(1e-12);
    expect(Math.abs(cdf(life, 150) - 0.8946007754381357)).toBeLessThan(1e-12);
  });

  // source: other-software. SciPy kstest of the same eight shares against the uniform law: D = 0.105.
  it('have their distance from an even spread', () => {
    const shares = [0.05, 0.2, 0.31, 0.44, 0.52, 0.68, 0.77, 0.93];
    expect(Math.abs(ksDistance(shares) - 0.105)).toBeLessThan(1e-9);
  });
});

// source: published, from memory. Newcombe, Statistics in Medicine 17 (1998), method 3: 81/263 gives 0.2553 to 0.3662,
// 15/148 gives 0.0624 to 0.1605, 0/20 gives 0 to 0.1611, 1/29 gives 0.0061 to 0.1718.
it.each([
  [81, 263, 0.2553, 0.3662],
  [15, 148, 0.0624, 0.1605],
  [0, 20, 0, 0.1611],
  [1, 29, 0.0061, 0.1718],
])('Wilson interval of %d in %d', (hits, count, low, high) => {
  const interval = wilsonInterval(hits, count);
  expect(Math.abs(interval.low - low)).toBeLessThan(5e-5);
  expect(Math.abs(interval.high - high)).toBeLessThan(5e-5);
});
