/**
 * The law that the lives of a kind of edge follow. Both have a median and a shape β, the same scatter of the log life, π/(√6·β):
 *  weibull       S(t) = 2^(−(t/m)^β)
 *  log-logistic  S(t) = 1/(1 + (t/m)^b), b = √2·β: some edges last far longer than a Weibull law allows
 */
export type LifeLaw = 'weibull' | 'log-logistic';

/**
 * b ÷ β: the log of a log-logistic life scatters by π/(√3·b), that of a Weibull life by π/(√6·β); equal at b = √2·β.
 * Source: formula.
 */
export const LOG_LOGISTIC_STRETCH = Math.SQRT2;

/**
 * What the life gathers up to an age as a cumulative hazard, from z, the log of (t/m)^b or of ln 2·(t/m)^β:
 * e^z (Weibull) or ln(1 + e^z) (log-logistic). S = e^(−A). Source: formula.
 * @example gatheredBy('log-logistic', 0) // => 0.6931471805599453
 */
export function gatheredBy(law: LifeLaw, z: number): number {
  if (law === 'weibull') return Math.exp(z);
  return z > 36 ? z : Math.log1p(Math.exp(z));
}

/**
 * Power of the age, (t/m)^b, that a log-logistic life has reached after so much further cumulative hazard: with u at first,
 * (1 + u)·e^E = 1 + u'; what is added, u' − u = (1 + u)·(e^E − 1). Domain: u >= 0, hazard >= 0. Source: formula.
 * @example logLogisticStep(1, 0.6931471805599453) // => 2
 */
export function logLogisticStep(power: number, hazard: number): number {
  return (1 + power) * Math.expm1(hazard);
}
