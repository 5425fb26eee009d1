import { choleskyFactor } from '../numeric/cholesky';

/** How far the posterior reaches to either side along each axis of its Laplace approximation; 1 where that is exact. */
export interface AxisSpread {
  readonly down: Float64Array;
  readonly up: Float64Array;
}

/** The spread of Laplace's approximation itself: the same to either side. */
export function noLean(n: number): AxisSpread {
  return { down: new Float64Array(n).fill(1), up: new Float64Array(n).fill(1) };
}

/** Distance from the mode, in Laplace spreads, at which the two are compared. */
const PROBE = 1.3;

/**
 * Spread of the posterior to either side of its mode along each column of the Cholesky factor of the covariance. Where few
 * edges have worn the true posterior leans (a long life is hard to rule out); Laplace's approximation cannot.
 * q = probe/√(2·drop of the log posterior), kept within ½ … 3. Source: J. Geweke, Econometrica 57 (1989), split normal.
 */
export function axisSpread(
  covariance: Float64Array,
  n: number,
  logPosteriorAt: (offset: Float64Array) => number,
): AxisSpread {
  const { down, up } = noLean(n);
  const lower = choleskyFactor(covariance, n);
  if (lower === undefined) return { down, up };
  const top = logPosteriorAt(new Float64Array(n));
  const reach = (axis: number, distance: number): number => {
    const offset = new Float64Array(n);
    for (let i = axis; i < n; i++) offset[i] = distance * (lower[i * n + axis] as number);
    const drop = top - logPosteriorAt(offset);
    return drop > 0 ? Math.min(3, Math.max(0.5, PROBE / Math.sqrt(2 * drop))) : 3;
  };
  for (let axis = 0; axis < n; axis++) {
    down[axis] = reach(axis, -PROBE);
    up[axis] = reach(axis, PROBE);
  }
  return { down, up };
}
