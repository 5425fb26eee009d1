import { invariant } from '../invariant';
import { MM_PER_IN } from './inch-mm';

/** Why a typed length is doubted, and by how much it misses. */
export interface UnitSlip {
  /**
   * `mm-read-as-in`: 9.5 in entered where 9.5 mm was meant. `in-read-as-mm`: 0.4375 mm where 0.4375 in was meant.
   * `too-long`, `too-short`: off by more than a factor of 2 with no unit to blame.
   */
  readonly suspicion: 'mm-read-as-in' | 'in-read-as-mm' | 'too-long' | 'too-short';
  /** Typed length ÷ expected length. */
  readonly ratio: number;
  /** What the length would be in the other unit, mm; only where the unit is the suspect. */
  readonly meantLengthMm?: number;
}

/** A length this many times the expected one, or its inverse, is doubted. High is at most 1.9 × medium (same tube). */
const DOUBT_FACTOR = 2;

/**
 * Doubts a thread length that lies far from the connection's own: the door can then ask instead of logging 25 times
 * the wear. Ratio r = typed ÷ expected. r from 0.5 to 2 passes (undefined). Outside: r within a factor 2 of 25.4, or of
 * 1/25.4, is taken for a unit slip; the rest is too long or too short. Domain: both lengths above 0, mm.
 * Source of the factor 2: common practice, no source.
 */
export function looksLikeUnitSlip(lengths: {
  readonly typedLengthMm: number;
  readonly expectedLengthMm: number;
}): UnitSlip | undefined {
  const { typedLengthMm, expectedLengthMm } = lengths;
  invariant(typedLengthMm > 0 && expectedLengthMm > 0, 'looksLikeUnitSlip requires lengths above 0');
  const ratio = typedLengthMm / expectedLengthMm;
  if (isNearOne(ratio)) return undefined;
  if (isNearOne(ratio / MM_PER_IN)) {
    return { suspicion: 'mm-read-as-in', ratio, meantLengthMm: typedLengthMm / MM_PER_IN };
  }
  if (isNearOne(ratio * MM_PER_IN)) {
    return { suspicion: 'in-read-as-mm', ratio, meantLengthMm: typedLengthMm * MM_PER_IN };
  }
  return { suspicion: ratio > 1 ? 'too-long' : 'too-short', ratio };
}

function isNearOne(ratio: number): boolean {
  return ratio <= DOUBT_FACTOR && ratio >= 1 / DOUBT_FACTOR;
}
