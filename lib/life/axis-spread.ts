import { choleskyFactor } from '../numeric/cholesky';

/** How far the posterior reaches to either side along each axis of its Laplace approximation; 1 where that is exact. */
export interface AxisSpread {
  readonly down: Float64Array;
  readonly up: Float64Array;
}

/** Distance from the mode, in Laplace spreads, at which the two are compared. */
const PROBE = 1.3;

/**
 * Spread of the posterior to either side of its mode along each column of the Cholesky factor of the covariance. Where few
 * edges have worn the true posterior leans (a long life is hard to rule out); Laplace's approximation cannot.
 * q = probe/√(2·drop of the log posterior), kept within ½ … 3. `logPosteriorAt` is asked for all offsets from the mode at
 * once. Source: J. Geweke, Econometrica 57 (1989), split normal.
 */
export function axisSpread(
  covariance: Float64Array,
  n: number,
  logPosteriorAt: (offsets: readonly Float64Array[]) => ArrayLike<number>,
): AxisSpread {
  const down = new Float64Array(n).fill(1);
  const up = new Float64Array(n).fill(1);
  const lower = choleskyFactor(covariance, n);
  if (lower === undefined) return { down, up };
  const offsets: Float64Array[] = [new Float64Array(n)];
  for (let axis = 0; axis < n; axis++)
    offsets.push(alongAxis(lower, n, axis, -PROBE), alongAxis(lower, n, axis, PROBE));
  const values = logPosteriorAt(offsets);
  const reach = (at: number): number => {
    const drop = (values[0] as number) - (values[at] as number);
    return drop > 0 ? Math.min(3, Math.max(0.5, PROBE / Math.sqrt(2 * drop))) : 3;
  };
  for (let axis = 0; axis < n; axis++) {
    down[axis] = reach(1 + 2 * axis);
    up[axis] = reach(2 + 2 * axis);
  }
  return { down, up };
}

function alongAxis(lower: Float64Array, n: number, axis: number, distance: number): Float64Array {
  const offset = new Float64Array(n);
  for (let i = axis; i < n; i++) offset[i] = distance * (lower[i * n + axis] as number);
  return offset;
}
