import { expect, it } from 'vitest';
import { posteriorDraws, splitNormal } from '@/lib/ensemble/posterior-draws';
import { normalQuantile } from '@/lib/numeric/normal';
import { fitted, HISTORIES } from '@/tests/support/small-shop';

// source: identity. Without lean: mean = mode and covariance = Laplace covariance, to rounding, for every pair of figures.
it('has the mode as its mean and the Laplace covariance as its own', () => {
  const leaning = fitted(HISTORIES);
  const ones = new Float64Array(leaning.layout.free.length).fill(1);
  const fit = { ...leaning, axisSpread: { down: ones, up: ones } };
  const draws = posteriorDraws(fit, 2048);
  const { free } = fit.layout;
  const mean = draws.map((column) => column.reduce((sum, value) => sum + value, 0) / 2048);
  mean.forEach((value, i) => {
    expect(Math.abs(value - (fit.theta[i] ?? 0))).toBeLessThan(1e-10);
  });
  free.forEach((a, i) => {
    free.forEach((b, j) => {
      let sum = 0;
      for (let k = 0; k < 2048; k++)
        sum += ((draws[a]?.[k] ?? 0) - (mean[a] ?? 0)) * ((draws[b]?.[k] ?? 0) - (mean[b] ?? 0));
      expect(Math.abs(sum / 2048 - (fit.covariance[i * free.length + j] ?? 0))).toBeLessThan(1e-10);
    });
  });
});

// source: formula. Density of a split normal: mode 0, below it spread `down`, above it `up`; share below down/(down + up).
it('splits a normal figure into two half normals of their own spreads', () => {
  const [down, up] = [0.7, 1.6];
  const zs = Array.from({ length: 4000 }, (_, i) => normalQuantile((i + 0.5) / 4000));
  const xs = zs.map((z) => splitNormal(z, down, up));
  expect(xs.every((x, i) => i === 0 || x > (xs[i - 1] ?? 0))).toBe(true);
  expect(Math.abs(xs.filter((x) => x < 0).length / 4000 - down / (down + up))).toBeLessThan(1 / 4000);
  // Mean of a split normal: √(2/π)·(up − down).
  expect(
    Math.abs(xs.reduce((sum, x) => sum + x, 0) / 4000 - Math.sqrt(2 / Math.PI) * (up - down)),
  ).toBeLessThan(2e-3);
  expect(splitNormal(1.3, 1, 1)).toBe(1.3);
});
