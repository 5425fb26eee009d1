/**
 * Logarithm of 1 − e^(−x): the log chance of failing within a cumulative hazard x, without loss for a tiny or a large x.
 * Domain: x >= 0; at 0 the value is −∞. Source: formula; the switch at ln 2 after M. Mächler, "Accurately computing
 * log(1 − exp(−|a|))", vignette of the R package Rmpfr, from memory.
 * @example logOneMinusExp(1) // => -0.45867514538708193
 */
export function logOneMinusExp(x: number): number {
  return x <= Math.LN2 ? Math.log(-Math.expm1(-x)) : Math.log1p(-Math.exp(-x));
}

/**
 * Logarithm of 1 + e^x, the "soft plus", without overflow.
 * Domain: every number. Source: formula.
 * @example logOnePlusExp(0) // => 0.6931471805599453
 */
export function logOnePlusExp(x: number): number {
  return x > 0 ? x + Math.log1p(Math.exp(-x)) : Math.log1p(Math.exp(x));
}
