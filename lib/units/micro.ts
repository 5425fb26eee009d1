import { invariant } from '../invariant';

const MICRO_PER_UNIT = 1_000_000;

/**
 * A quantity as a whole number of millionths, so that the ledger's sums are exact and come out the same in any order.
 * Rounds to the nearest millionth, halves away from zero, so that a reversal (−x) always cancels its entry (x).
 * Domain: finite, |x| below about 9.007 × 10⁹ (safe whole numbers). Throws outside it.
 * @example toMicro(10.9375) // => 10937500
 */
export function toMicro(value: number): number {
  invariant(Number.isFinite(value), 'toMicro requires a finite number');
  const size = Math.round(Math.abs(value) * MICRO_PER_UNIT);
  invariant(Number.isSafeInteger(size), 'toMicro requires a value within the safe whole numbers');
  return value < 0 && size > 0 ? -size : size;
}

/**
 * Millionths back to the quantity. Domain: a safe whole number; throws otherwise.
 * @example fromMicro(10937500) // => 10.9375
 */
export function fromMicro(micro: number): number {
  invariant(Number.isSafeInteger(micro), 'fromMicro requires a safe whole number');
  return micro / MICRO_PER_UNIT;
}
