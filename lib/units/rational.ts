import { invariant } from '../invariant';

/**
 * An exact fraction in lowest terms, `den` above 0. Tube sizes are nominal inch fractions, so 9/16 is kept as 9 over
 * 16 and never as 0.5625: two sizes are the same when both numbers are the same.
 */
export interface Rational {
  readonly num: number;
  readonly den: number;
}

/**
 * Makes a fraction and reduces it. Symbols: num/den, both whole numbers, den > 0, each within ±2^53.
 * Throws when a part is not such a number (the doors parse text with `parseInches`, which refuses instead).
 */
export function rational(num: number, den: number): Rational {
  invariant(Number.isSafeInteger(num) && Number.isSafeInteger(den), 'rational requires whole numbers');
  invariant(den > 0, 'rational requires a denominator above 0');
  const divisor = greatestCommonDivisor(Math.abs(num), den);
  return { num: num / divisor, den: den / divisor };
}

/**
 * The exact fraction of a figure as it is written in decimals: 0.5625 is 9/16. Domain: finite, 0 or more, at most 12 decimal
 * places and 15 figures; throws outside it.
 * @example decimalRational(0.5625).den // => 16
 */
export function decimalRational(value: number): Rational {
  const [whole = '', places = ''] = String(value).split('.');
  invariant(/^\d+$/.test(whole + places), 'decimalRational requires a figure in plain decimals, 0 or more');
  invariant(
    places.length <= 12 && (whole + places).length <= 15,
    'decimalRational requires at most 15 figures',
  );
  return rational(Number(whole + places), 10 ** places.length);
}

/** The fraction as a decimal number, as near as a double can be. Both parts exact, so the error is one rounding. */
export function rationalValue(value: Rational): number {
  return value.num / value.den;
}

/** Orders two fractions exactly: negative, 0 or positive. Cross-multiplies in whole numbers of any length. */
export function compareRationals(a: Rational, b: Rational): number {
  const left = BigInt(a.num) * BigInt(b.den);
  const right = BigInt(b.num) * BigInt(a.den);
  if (left === right) return 0;
  return left < right ? -1 : 1;
}

/** Whether two fractions are the same value. Lowest terms, so the parts decide. */
export function sameRational(a: Rational, b: Rational): boolean {
  return a.num === b.num && a.den === b.den;
}

function greatestCommonDivisor(a: number, b: number): number {
  let [larger, smaller] = [a, b];
  while (smaller > 0) [larger, smaller] = [smaller, larger % smaller];
  return larger;
}
