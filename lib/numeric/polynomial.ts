/**
 * Polynomial by Horner's rule, coefficients from the highest power down.
 * Source: formula.
 * @example polynomial([1, -3, 2], 5) // => 12
 */
export function polynomial(coefficients: readonly number[], x: number): number {
  let value = 0;
  for (const coefficient of coefficients) value = value * x + coefficient;
  return value;
}

/** Quotient of two polynomials at x, coefficients from the highest power down. Source: formula. */
export function rational(numerator: readonly number[], denominator: readonly number[], x: number): number {
  return polynomial(numerator, x) / polynomial(denominator, x);
}
