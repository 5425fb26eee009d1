import { invariant } from '../invariant';

/**
 * A decimal figure held exactly: a whole number of 10⁻²⁴. For tables whose figures are defined by a rounding rule, where a
 * double that lies a hair under a half would round the wrong way (0.0015 + 0.0015 + 0.00375 = 0.00675 is such a half).
 */
export type Fixed = bigint;

const PLACES = 24;
export const FIXED_ONE: Fixed = 10n ** BigInt(PLACES);
/** A division or a root is cut off in the last place; so little below a half counts as the half. */
const CUT_OFF = 10n ** 6n;
const PLAIN = /^(-?)(\d+)(?:\.(\d+))?(?:e-(\d+))?$/;

/**
 * A figure as it is written in decimals: the shortest decimal of a double, so 0.2969 is 2969 ten-thousandths exactly.
 * Domain: finite, at most 24 decimal places.
 */
export function fixedOf(value: number): Fixed {
  const match = PLAIN.exec(String(value));
  invariant(match !== null, 'fixedOf requires a figure in plain decimals');
  const decimals = match[3] ?? '';
  const places = decimals.length + Number(match[4] ?? 0);
  invariant(places <= PLACES, 'fixedOf requires at most 24 decimal places');
  const size = BigInt((match[2] ?? '0') + decimals) * 10n ** BigInt(PLACES - places);
  return match[1] === '-' ? -size : size;
}

/** a × b, cut off in the last place. */
export function timesFixed(a: Fixed, b: Fixed): Fixed {
  return (a * b) / FIXED_ONE;
}

/** a ÷ b, cut off in the last place. Domain: b not 0. */
export function overFixed(a: Fixed, b: Fixed): Fixed {
  invariant(b !== 0n, 'overFixed requires a divisor that is not 0');
  return (a * FIXED_ONE) / b;
}

/** The square or cube root, cut off in the last place; exact where the root is a decimal. Domain: a ≥ 0. */
export function rootFixed(a: Fixed, degree: 2 | 3): Fixed {
  invariant(a >= 0n, 'rootFixed requires a figure of 0 or more');
  return wholeRoot(a * FIXED_ONE ** BigInt(degree - 1), BigInt(degree));
}

/**
 * Rounds half up (away from 0 for what is above 0) to so many places and gives the whole number of units in the last one:
 * 0.00675 to 4 places is 68. Domain: a ≥ 0, places 0 to 12.
 */
export function roundHalfUp(a: Fixed, places: number): number {
  invariant(a >= 0n, 'roundHalfUp requires a figure of 0 or more');
  const unit = 10n ** BigInt(PLACES - places);
  return Number((a + unit / 2n + CUT_OFF) / unit);
}

/** Largest whole number whose power does not exceed `value`, by Newton's method from above. */
function wholeRoot(value: bigint, degree: bigint): bigint {
  if (value === 0n) return 0n;
  let guess = 1n << (BigInt(value.toString(2).length) / degree + 1n);
  for (;;) {
    const next = ((degree - 1n) * guess + value / guess ** (degree - 1n)) / degree;
    if (next >= guess) return guess;
    guess = next;
  }
}
