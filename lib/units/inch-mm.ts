import type { Rational } from './rational';

/** Millimetres in one inch, exact by definition (international inch, 1959). */
export const MM_PER_IN = 25.4;

/**
 * Inches to millimetres: mm = in × 25.4.
 * @example inToMm(0.5625) // => 14.2875
 */
export function inToMm(lengthIn: number): number {
  return lengthIn * MM_PER_IN;
}

/**
 * Millimetres to inches: in = mm ÷ 25.4.
 * @example mmToIn(12.7) // => 0.5
 */
export function mmToIn(lengthMm: number): number {
  return lengthMm / MM_PER_IN;
}

/**
 * An exact inch fraction in millimetres: mm = num × 254 ÷ (den × 10). Whole numbers up to the one division, so the
 * result is the nearest double to the true length.
 * @example rationalInToMm({ num: 9, den: 16 }) // => 14.2875
 */
export function rationalInToMm({ num, den }: Rational): number {
  return (num * 254) / (den * 10);
}
