import type { LifeFit } from '../life/life-fit';
import { choleskyFactor } from '../numeric/cholesky';
import { normalCdf, normalQuantile } from '../numeric/normal';
import { normalPoints } from './normal-points';

/**
 * Draws of every figure of a life fit from its Laplace posterior: one array of `drawCount` values to each figure, in the
 * order of the fit's layout. Fixed points, so the same fit always gives the same digits. θ = mode + L·x, L·Lᵀ = covariance,
 * x split normal: each side of the mode with the spread that the posterior has there.
 * Source: formula.
 */
export function posteriorDraws(fit: LifeFit, drawCount: number): Float64Array[] {
  const { free } = fit.layout;
  const n = free.length;
  const draws = Array.from(fit.theta, (value) => new Float64Array(drawCount).fill(value));
  const lower = choleskyFactor(fit.covariance, n);
  if (lower === undefined) return draws;
  const points = normalPoints({ count: drawCount, dimensions: n, key: `figures:${fit.kind}` });
  points.forEach((point, j) => {
    const [down, up] = [fit.axisSpread.down[j] as number, fit.axisSpread.up[j] as number];
    if (down !== up || up !== 1) points[j] = point.map((z) => splitNormal(z, down, up));
  });
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

/**
 * Split-normal figure from a normal one with the same rank: below 0 with spread `down`, above with spread `up`, the sides
 * as likely as they are wide. Domain: both spreads above 0. Source: formula.
 * @example splitNormal(1.5, 1, 1) // => 1.5
 */
export function splitNormal(z: number, down: number, up: number): number {
  if (down === up) return z * up;
  const half = (down + up) / 2;
  const belowShare = down / (down + up);
  const share = normalCdf(z);
  if (share < belowShare) return down * normalQuantile((share * half) / down);
  return -up * normalQuantile((normalCdf(-z) * half) / up);
}
