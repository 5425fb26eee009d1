import type { LifeFit } from '../life/life-fit';
import { choleskyFactor } from '../numeric/cholesky';
import { normalPoints } from './normal-points';

/**
 * Draws of every figure of a life fit from its Laplace posterior: one array of `drawCount` values to each figure, in the
 * order of the fit's layout. Fixed points, so the same fit always gives the same digits. θ = mode + L·z, L·Lᵀ = covariance.
 * Source: formula.
 */
export function posteriorDraws(fit: LifeFit, drawCount: number): Float64Array[] {
  const { free } = fit.layout;
  const n = free.length;
  const draws = Array.from(fit.theta, (value) => new Float64Array(drawCount).fill(value));
  const lower = choleskyFactor(fit.covariance, n);
  if (lower === undefined) return draws;
  const points = normalPoints({ count: drawCount, dimensions: n, key: `figures:${fit.kind}` });
  free.forEach((index, i) => {
    const column = draws[index] as Float64Array;
    for (let j = 0; j <= i; j++) {
      const weight = lower[i * n + j] as number;
      const point = points[j] as Float64Array;
      for (let k = 0; k < drawCount; k++) column[k] = (column[k] as number) + weight * (point[k] as number);
    }
  });
  return draws;
}
