import { expect, it } from 'vitest';
import { proposalDraws, splitNormalQuantile } from '@/lib/ensemble/proposal-draws';
import { fitted, HISTORIES } from '@/tests/support/small-shop';

// source: identity. Without lean: mean = mode and covariance = Laplace covariance. Even points: 2 % of a spread.
it('has the mode as its mean and the Laplace covariance as its own', () => {
  const leaning = fitted(HISTORIES);
  const ones = new Float64Array(leaning.layout.free.length).fill(1);
  const fit = { ...leaning, axisSpread: { down: ones, up: ones } };
  const { columns } = proposalDraws(fit, 4096);
  const { free } = fit.layout;
  const sd = (i: number): number => Math.sqrt(fit.covariance[i * free.length + i] ?? 0);
  const mean = columns.map((column) => column.reduce((sum, value) => sum + value, 0) / 4096);
  free.forEach((a, i) => {
    expect(Math.abs((mean[a] ?? 0) - (fit.theta[a] ?? 0)) / sd(i)).toBeLessThan(0.02);
    free.forEach((b, j) => {
      let sum = 0;
      for (let k = 0; k < 4096; k++)
        sum += ((columns[a]?.[k] ?? 0) - (mean[a] ?? 0)) * ((columns[b]?.[k] ?? 0) - (mean[b] ?? 0));
      const miss = sum / 4096 - (fit.covariance[i * free.length + j] ?? 0);
      expect(Math.abs(miss) / (sd(i) * sd(j))).toBeLessThan(0.05);
    });
  });
});

// source: formula. Density of a split normal: mode 0, below it spread `down`, above it `up`; share below down/(down + up);
// mean √(2/π)·(up − down).
it('has the quantiles of two half normals, each of its own spread', () => {
  const [down, up] = [0.7, 1.6];
  const xs = Array.from({ length: 4000 }, (_, i) => splitNormalQuantile((i + 0.5) / 4000, down, up));
  expect(xs.every((x, i) => i === 0 || x > (xs[i - 1] ?? 0))).toBe(true);
  expect(Math.abs(xs.filter((x) => x < 0).length / 4000 - down / (down + up))).toBeLessThan(1 / 4000);
  const mean = xs.reduce((sum, x) => sum + x, 0) / 4000;
  expect(Math.abs(mean - Math.sqrt(2 / Math.PI) * (up - down))).toBeLessThan(2e-3);
});
