import { invariant } from '../invariant';
import { hashKey } from './random-stream';
import { SOBOL_DIRECTIONS } from './sobol-directions';

const BITS = 32;

/** How many dimensions the table of direction numbers serves. */
export const SOBOL_MAX_DIMENSIONS = SOBOL_DIRECTIONS.length + 1;

/**
 * Scrambled Sobol points: `count` points spread over the unit cube far more evenly than chance, always the same for the
 * same key. Each dimension is scrambled by nested uniform (Owen) scrambling with a hash of the key; with count a power
 * of two every dimension by itself has exactly one point in each of `count` equal strata.
 * Returned row by row (point after point), strictly inside (0, 1).
 * Domain: 1 <= dimensions <= 64, 1 <= count <= 2^20. Errors: throws outside (a bug).
 * Source: I. M. Sobol (1967), direction numbers of Joe and Kuo (2008); scramble by B. Burley, JCGT 9(4), 2020, from memory.
 */
export function scrambledSobol({
  count,
  dimensions,
  key,
}: {
  count: number;
  dimensions: number;
  key: string;
}): Float64Array {
  invariant(
    dimensions >= 1 && dimensions <= SOBOL_MAX_DIMENSIONS,
    'scrambledSobol serves 1 to 64 dimensions',
  );
  invariant(count >= 1 && count <= 2 ** 20, 'scrambledSobol serves 1 to 2^20 points');
  const points = new Float64Array(count * dimensions);
  for (let dimension = 0; dimension < dimensions; dimension++) {
    const directions = directionsOf(dimension);
    const seed = hashKey(`${key}/${dimension}`, 0x9e3779b9);
    for (let index = 0; index < count; index++) {
      const bits = nestedScramble(sobolBits(directions, index), seed);
      points[index * dimensions + dimension] = (bits + 0.5) / 4294967296;
    }
  }
  return points;
}

/** The index-th point of one dimension as a 32-bit fraction, unscrambled. */
export function sobolBits(directions: Uint32Array, index: number): number {
  let bits = 0;
  for (let i = 0; index >>> i !== 0; i++) if ((index >>> i) & 1) bits ^= directions[i] as number;
  return bits >>> 0;
}

/** Direction numbers of a dimension (0 is the van der Corput sequence), by the recurrence of its polynomial. */
export function directionsOf(dimension: number): Uint32Array {
  const directions = new Uint32Array(BITS);
  const row = dimension === 0 ? undefined : SOBOL_DIRECTIONS[dimension - 1];
  if (row === undefined) return directions.map((_, i) => 1 << (BITS - 1 - i));
  const polynomial = row[0] as number;
  const degree = row.length - 1;
  for (let i = 0; i < BITS; i++) {
    if (i < degree) directions[i] = (row[i + 1] as number) << (BITS - 1 - i);
    else directions[i] = recurrence(directions, polynomial, degree, i);
  }
  return directions;
}

function recurrence(directions: Uint32Array, polynomial: number, degree: number, i: number): number {
  const oldest = directions[i - degree] as number;
  let value = oldest ^ (oldest >>> degree);
  for (let k = 1; k < degree; k++) {
    if ((polynomial >>> (degree - k)) & 1) value ^= directions[i - k] as number;
  }
  return value;
}

/** Owen's nested scramble of a 32-bit fraction: flips each bit by a hash of the bits above it. */
function nestedScramble(bits: number, seed: number): number {
  let x = reverseBits(bits);
  x = (x + seed) | 0;
  x ^= Math.imul(x, 0x6c50b47c);
  x ^= Math.imul(x, 0xb82f1e52);
  x ^= Math.imul(x, 0xc7afe638);
  x ^= Math.imul(x, 0x8d22f6e6);
  return reverseBits(x) >>> 0;
}

function reverseBits(value: number): number {
  let x = value | 0;
  x = ((x >>> 1) & 0x55555555) | ((x & 0x55555555) << 1);
  x = ((x >>> 2) & 0x33333333) | ((x & 0x33333333) << 2);
  x = ((x >>> 4) & 0x0f0f0f0f) | ((x & 0x0f0f0f0f) << 4);
  x = ((x >>> 8) & 0x00ff00ff) | ((x & 0x00ff00ff) << 8);
  return (x >>> 16) | (x << 16);
}
