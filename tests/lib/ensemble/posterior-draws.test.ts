import { expect, it } from 'vitest';
import { posteriorDraws } from '@/lib/ensemble/posterior-draws';
import { fitted, HISTORIES } from '@/tests/support/small-shop';

// source: identity. Mean = mode and covariance = Laplace covariance, to rounding, for every pair of figures.
it('has the mode as its mean and the Laplace covariance as its own', () => {
  const fit = fitted(HISTORIES);
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
