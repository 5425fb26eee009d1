import type { LifeFit } from '../life/life-fit';
import { choleskyFactor } from '../numeric/cholesky';
import { normalQuantile } from '../numeric/normal';
import { spreadPoints } from './spread-points';

/** Draws of every figure from the approximate posterior, with the log of the density they were drawn from. */
export interface ProposalDraws {
  /** One column to each figure, in the order of the fit's layout. */
  readonly columns: readonly Float64Array[];
  /** Over the free figures, whole: draws of two models are weighed by it. */
  readonly logDensity: Float64Array;
}

/**
 * Draws from the approximate posterior of a life fit: θ = mode + L·x, L·Lᵀ = Laplace covariance, x split normal: to each
 * side of the mode with the spread that the posterior has there. Fixed points: the same fit gives the same digits.
 * Source: formula.
 */
export function proposalDraws(
  fit: Pick<LifeFit, 'layout' | 'kind' | 'theta' | 'covariance' | 'axisSpread'>,
  count: number,
  name = 'figures',
): ProposalDraws {
  const { free } = fit.layout;
  const n = free.length;
  const columns = Array.from(fit.theta, (value) => new Float64Array(count).fill(value));
  const logDensity = new Float64Array(count);
  const lower = choleskyFactor(fit.covariance, n);
  if (lower === undefined) return { columns, logDensity };
  const points = spreadPoints({ count, dimensions: n, key: `${name}:${fit.kind}` });
  for (let i = 0; i < n; i++) addTo(logDensity, -Math.log(lower[i * n + i] as number) - HALF_LN_TWO_PI);
  points.forEach((point, j) => {
    bend(point, fit.axisSpread.down[j] as number, fit.axisSpread.up[j] as number, logDensity);
  });
  free.forEach((index, i) => {
    const column = columns[index] as Float64Array;
    for (let j = 0; j <= i; j++) {
      const weight = lower[i * n + j] as number;
      if (weight === 0) continue;
      const point = points[j] as Float64Array;
      for (let k = 0; k < count; k++) column[k] = (column[k] as number) + weight * (point[k] as number);
    }
  });
  return { columns, logDensity };
}

/** Turns a column of even figures over (0, 1) into split-normal ones, in place, and adds their log density. */
function bend(point: Float64Array, down: number, up: number, logDensity: Float64Array): void {
  for (let k = 0; k < point.length; k++) {
    const x = splitNormalQuantile(point[k] as number, down, up);
    const far = x / (x < 0 ? down : up);
    point[k] = x;
    logDensity[k] = (logDensity[k] as number) - 0.5 * far * far;
  }
  addTo(logDensity, -Math.log((down + up) / 2));
}

const HALF_LN_TWO_PI = 0.9189385332046727;

function addTo(values: Float64Array, constant: number): void {
  for (let k = 0; k < values.length; k++) values[k] = (values[k] as number) + constant;
}

/**
 * Quantile of the split normal: below 0 with spread `down`, above with spread `up`, the sides as likely as they are wide.
 * Domain: 0 < share < 1, both spreads above 0. Source: formula.
 * @example splitNormalQuantile(0.25, 1, 3) // => 0
 */
export function splitNormalQuantile(share: number, down: number, up: number): number {
  const half = (down + up) / 2;
  if (share * 2 * half < down) return down * normalQuantile((share * half) / down);
  return -up * normalQuantile(((1 - share) * half) / up);
}
