import { stratifiedUniforms, streamOfKey } from '../numeric/random-stream';
import { SOBOL_MAX_DIMENSIONS, scrambledSobol } from '../numeric/sobol';

/**
 * Points for drawing futures: `dimensions` columns of `count` figures spread evenly over (0, 1), the same for the same key.
 * Scrambled Sobol points (beyond 64 columns: shuffled strata), rows shuffled by the key so that two sets may be used side
 * by side. Source: formula (quasi-Monte Carlo).
 */
export function spreadPoints({
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
  return Array.from({ length: dimensions }, (_, column) =>
    column < sobolDimensions
      ? Float64Array.from(order, (row) => points[row * sobolDimensions + column] as number)
      : stratifiedUniforms(`${key}/${column}`, count),
  );
}

/** The numbers from 0 to count − 1 in an order shuffled by the key. Source: formula (Fisher and Yates). */
export function shuffledOrder(count: number, key: string): Uint32Array {
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
