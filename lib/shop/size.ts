import { fractionAscii, fractionText } from '../units/fraction-text';
import { compareRationals, type Rational } from '../units/rational';

/**
 * The key under which a tube size is stored and compared: the exact inch fraction in lowest terms, plain slash.
 * @example sizeKey({ num: 9, den: 16 }) // => "9/16"
 */
export function sizeKey(sizeIn: Rational): string {
  return fractionAscii(sizeIn);
}

/**
 * A tube size for screens, as a true fraction without its inch mark.
 * @example sizeLabel({ num: 9, den: 16 }) // => "9⁄16"
 */
export function sizeLabel(sizeIn: Rational): string {
  return fractionText(sizeIn);
}

/** Orders two tube sizes, smallest first, exactly. */
export function compareSizes(a: Rational, b: Rational): number {
  return compareRationals(a, b);
}

/** The sizes from small to large, each once. Leaves the list that it is given alone. */
export function orderSizes(sizesIn: readonly Rational[]): Rational[] {
  const distinct = new Map(sizesIn.map((size) => [sizeKey(size), size]));
  return [...distinct.values()].sort(compareSizes);
}

/**
 * The size code inside a tool's short ID: hundredths of an inch, rounded half up in whole numbers, at least two figures.
 * 1/4 → 25, 3/8 (37.5) → 38, 9/16 (56.25) → 56, 3/4 → 75, 1 → 100. A label, not a key: sizes less than 0.01 in apart
 * can share a code.
 * @example sizeCode({ num: 3, den: 8 }) // => "38"
 */
export function sizeCode(sizeIn: Rational): string {
  const hundredths = Math.floor((200 * sizeIn.num + sizeIn.den) / (2 * sizeIn.den));
  return String(hundredths).padStart(2, '0');
}
