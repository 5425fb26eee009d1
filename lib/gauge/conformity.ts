import { invariant } from '../invariant';
import { normalCdf } from '../numeric/normal';

/** A measured value with its standard uncertainty u (U ÷ k), in one unit. */
export interface Measured {
  readonly value: number;
  readonly standardUncertainty: number;
}

/** Tolerance limits in the same unit; a side without a limit is left out, and then anything conforms on that side. */
export interface Limits {
  readonly lower?: number | undefined;
  readonly upper?: number | undefined;
}

/**
 * Probability of conformity: how likely the true value lies within the limits, given what was measured and nothing else
 * known of it. For saying how sure a certificate's verdict is.  p = Φ((T_U − y)/u) − Φ((T_L − y)/u)
 * Symbols: y, measured value; u, standard uncertainty; T_L, T_U, limits; all in one unit. A certain value (u = 0) gives
 * 0 or 1, a limit itself conforming. Domain: u >= 0, T_L < T_U. Errors: throws outside it.
 * Source: JCGM 106:2012 clauses 7.2 to 7.4, normal state of knowledge.
 * @example conformityProbability({ value: 0, standardUncertainty: 1 }, { upper: 0 }) // => 0.5
 */
export function conformityProbability(measured: Measured, limits: Limits): number {
  return normalMassWithin({ mean: measured.value, sd: measured.standardUncertainty }, limits);
}

/** What is known of a quantity before it is measured: a normal distribution. */
export interface NormalBelief {
  readonly mean: number;
  readonly sd: number;
}

/**
 * What is known of a true value after measuring it, when something was known before: the two weighed by their
 * certainty.  1/s² = 1/s₀² + 1/u²,  m = s²·(m₀/s₀² + y/u²)
 * Domain: s₀ > 0, u > 0. Source: JCGM 106:2012 Annex A (normal prior, normal measurement).
 * @example posteriorBelief({ mean: 0, sd: 1 }, { value: 2, standardUncertainty: 1 }).mean // => 1
 */
export function posteriorBelief(prior: NormalBelief, measured: Measured): NormalBelief {
  const u = measured.standardUncertainty;
  invariant(prior.sd > 0 && u > 0, 'posteriorBelief requires two standard deviations above 0');
  // With t the smaller deviation over the larger, nothing overflows however far apart they lie.
  const share =
    prior.sd >= u ? 1 / (1 + (u / prior.sd) ** 2) : (prior.sd / u) ** 2 / (1 + (prior.sd / u) ** 2);
  return { mean: prior.mean + share * (measured.value - prior.mean), sd: u * Math.sqrt(share) };
}

/**
 * Probability of conformity when something was known before: that of the posterior.
 * Domain and source: see `posteriorBelief`, `conformityProbability`.
 */
export function conformityProbabilityWithPrior(
  prior: NormalBelief,
  measured: Measured,
  limits: Limits,
): number {
  return normalMassWithin(posteriorBelief(prior, measured), limits);
}

/**
 * How much of a normal distribution lies within limits. Accurate far out on either side, where the difference of two
 * figures close to 1 would be noise. Domain: sd >= 0, lower < upper. Source: formula.
 * @example normalMassWithin({ mean: 0, sd: 1 }, { lower: 0 }) // => 0.5
 */
export function normalMassWithin({ mean, sd }: NormalBelief, { lower, upper }: Limits): number {
  invariant(sd >= 0, 'a standard deviation must not be negative');
  invariant(!(lower !== undefined && upper !== undefined && lower >= upper), 'limits must not be crossed');
  if (sd === 0)
    return (lower === undefined || mean >= lower) && (upper === undefined || mean <= upper) ? 1 : 0;
  const a = lower === undefined ? Number.NEGATIVE_INFINITY : (lower - mean) / sd;
  const b = upper === undefined ? Number.POSITIVE_INFINITY : (upper - mean) / sd;
  return a > 0 ? normalCdf(-a) - normalCdf(-b) : normalCdf(b) - normalCdf(a);
}

/**
 * Specific consumer's risk at an acceptance limit that lies a guard band w = k·u inside a tolerance limit: the most that
 * an accepted value risks being outside, the other limit being far.  R = 1 − Φ(k)
 * Domain: every k; below 0 the acceptance limit lies outside. Source: formula, JCGM 106:2012 clause 8.3.
 * @example specificRisk(0) // => 0.5
 */
export function specificRisk(guardFactor: number): number {
  return normalCdf(-guardFactor);
}

/** The acceptance limits: the tolerance limits drawn in by the guard band w (widened when it is negative). */
export function acceptanceLimits({ lower, upper }: Limits, guardBand: number): Limits {
  return {
    lower: lower === undefined ? undefined : lower + guardBand,
    upper: upper === undefined ? undefined : upper - guardBand,
  };
}
