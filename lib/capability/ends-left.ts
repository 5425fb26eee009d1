import { selectRank } from './rank-select';

/** Room for the last digit: 24 ends of 10.5 turns from exactly 252 turns are 24 ends. */
const END_SLACK = 1e-9;

/**
 * Whole ends in what is left, per draw: ⌊capacity ÷ (exposure per end × factor)⌋. An end begun and not finished is no
 * end. Symbols: capacity and exposure in the same unit (turns or mm³), exposure and factors > 0.
 */
export function wholeEnds(
  capacity: Float64Array,
  exposurePerEnd: number,
  factors: Float64Array,
): Float64Array {
  const ends = new Float64Array(capacity.length);
  for (let k = 0; k < ends.length; k++)
    ends[k] = Math.floor((capacity[k] as number) / (exposurePerEnd * (factors[k] as number)) + END_SLACK);
  return ends;
}

/** Whether a life covers what is asked of it, but for the last digit. */
export function isWithinLife(exposure: number, life: number): boolean {
  return exposure <= life * (1 + END_SLACK);
}

/**
 * Share of draws with at least so many ends: P(line made).
 * Domain: at least one draw.
 */
export function shareAtLeast(ends: Float64Array, wanted: number): number {
  let count = 0;
  for (let k = 0; k < ends.length; k++) if ((ends[k] as number) >= wanted) count++;
  return count / ends.length;
}

/**
 * Most ends that are reached with at least each of the stated probabilities: at 0.9 the safe ends, at 0.5 the likely
 * ends. The n-th greatest figure, n = ⌈p·K⌉, so `endsAtConfidence(e, [p])[0] >= n` exactly when `shareAtLeast(e, n) >= p`.
 * Domain: at least one draw, 0 < p ≤ 1.
 */
export function endsAtConfidence(ends: Float64Array, probabilities: readonly number[]): number[] {
  const copy = Float64Array.from(ends);
  return probabilities.map((probability) => {
    const rank = Math.max(1, Math.ceil(probability * ends.length - END_SLACK));
    return selectRank(copy, ends.length - rank);
  });
}

/** The smaller of two in every draw: an end needs its cone and its thread. */
export function lesserEnds(a: Float64Array, b: Float64Array): Float64Array {
  const ends = new Float64Array(a.length);
  for (let k = 0; k < ends.length; k++) ends[k] = Math.min(a[k] as number, b[k] as number);
  return ends;
}
