import { invariant } from '../invariant';
import type { Rational } from './rational';

/** U+2044, the slash that fonts set as a true fraction. */
const FRACTION_SLASH = '⁄';

/**
 * An inch size as a true fraction for screens: 9⁄16, 1 1⁄2, 1. The fraction slash is U+2044. No inch mark: the screen
 * adds its own. Domain: value above or at 0. `parseInches` reads the text back to the same fraction.
 * @example fractionText({ num: 9, den: 16 }) // => "9⁄16"
 */
export function fractionText(value: Rational): string {
  return mixedText(value, FRACTION_SLASH);
}

/**
 * The same with a plain slash, for keys, files and addresses: 9/16, 1 1/2, 1.
 * @example fractionAscii({ num: 3, den: 2 }) // => "1 1/2"
 */
export function fractionAscii(value: Rational): string {
  return mixedText(value, '/');
}

function mixedText({ num, den }: Rational, slash: string): string {
  invariant(num >= 0 && den > 0, 'fraction text requires a value of 0 or more');
  const whole = Math.floor(num / den);
  const rest = num % den;
  if (rest === 0) return String(whole);
  return whole === 0 ? `${rest}${slash}${den}` : `${whole} ${rest}${slash}${den}`;
}
