import { choleskyFactor } from '../numeric/cholesky';
import { normalQuantile } from '../numeric/normal';
import { stratifiedUniforms, streamOfKey } from '../numeric/random-stream';
import { SOBOL_MAX_DIMENSIONS, scrambledSobol } from '../numeric/sobol';

/**
 * Normal points for drawing futures: `dimensions` columns of `count` standard normal figures, the same for the same key.
 * Scrambled Sobol points (beyond 64 columns: shuffled strata), rows shuffled by the key so that two sets may be used side
 * by side, then whitened: every column has mean 0 and spread 1 and no two are correlated, to rounding.
 * Source: formula (quasi-Monte Carlo with moment matching).
 */
export function normalPoints({
  count,
  dimensions,
  key,
}: {
  count: number;
  dimensions: number;
  key: string;
}): Float64Array[] {
  const sobolDimensions = Math.min(dimensions, SOBOL_MAX_DIMENSIONS);
  const order = shuffledOrder(count, key);
  const points =
    sobolDimensions > 0 ? scrambledSobol({ count, dimensions: sobolDimensions, key }) : new Float64Array(0);
  const columns = Array.from({ length: dimensions }, (_, column) =>
    column < sobolDimensions
      ? Float64Array.from(order, (row) => normalQuantile(points[row * sobolDimensions + column] as number))
      : stratifiedUniforms(`${key}/${column}`, count).map(normalQuantile),
  );
  return count >= 4 * dimensions ? whitened(columns, count) : columns;
}

function shuffledOrder(count: number, key: string): Uint32Array {
  const random = streamOfKey(`${key}/order`);
  const order = Uint32Array.from({ length: count }, (_, i) => i);
  for (let i = count - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    const held = order[i] as number;
    order[i] = order[j] as number;
    order[j] = held;
  }
  return order;
}

/** Z − mean, then Z·L⁻ᵀ with L·Lᵀ the columns' own covariance. */
function whitened(columns: readonly Float64Array[], count: number): Float64Array[] {
  const n = columns.length;
  const centred = columns.map((column) => {
    const mean = column.reduce((sum, value) => sum + value, 0) / count;
    return column.map((value) => value - mean);
  });
  const covariance = new Float64Array(n * n);
  for (let a = 0; a < n; a++) {
    for (let b = 0; b <= a; b++)
      covariance[a * n + b] = dot(centred[a] as Float64Array, centred[b] as Float64Array) / count;
  }
  const lower = choleskyFactor(covariance, n);
  if (lower === undefined) return centred;
  for (let a = 0; a < n; a++) {
    const column = centred[a] as Float64Array;
    for (let b = 0; b < a; b++) addScaled(column, centred[b] as Float64Array, -(lower[a * n + b] as number));
    addScaled(column, column, 1 / (lower[a * n + a] as number) - 1);
  }
  return centred;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}

function addScaled(target: Float64Array, source: Float64Array, factor: number): void {
  for (let i = 0; i < target.length; i++) target[i] = (target[i] as number) + factor * (source[i] as number);
}
