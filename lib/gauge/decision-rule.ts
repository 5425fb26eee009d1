import type { DecisionRule } from '../shop/calibration';
import { acceptanceLimits, conformityProbability, type Limits } from './conformity';

/** A result as a certificate states it: the error, and the expanded uncertainty U with its coverage factor k. */
export interface CertifiedError {
  readonly error: number;
  readonly expandedUncertainty: number;
  readonly coverageFactor: number;
}

export interface ConformityDecision {
  readonly decision: 'accept' | 'reject' | 'between';
  /** Guard band w, in the unit of the limits. */
  readonly guardBand: number;
  /** How likely the true error lies within the limits, nothing else known. */
  readonly probability: number;
  /** The rule that decided; kept with the result. */
  readonly rule: DecisionRule;
}

/** One-sided 95 % of the normal distribution: Φ⁻¹(0.95). */
const K_95 = 1.6448536269514722;

/**
 * Guard band of each rule: none (the measured error counts as it is, as much as 1 in 2 wrong at the limit); the whole
 * expanded uncertainty U (at k = 2 about 1 in 44); or 1.645·u, which proves conformity to 95 % at a single limit.
 * Source: ISO 14253-1 (uncertainty counts against whoever proves; U in older editions, 95 % as the default of 2017, both
 * from memory) and ILAC-G8:09/2019 (w = U).
 * @example guardBandOf('guarded', { error: 0, expandedUncertainty: 4, coverageFactor: 2 }) // => 4
 */
export function guardBandOf(rule: DecisionRule, certified: CertifiedError): number {
  if (rule === 'simple') return 0;
  if (rule === 'guarded') return certified.expandedUncertainty;
  return (K_95 * certified.expandedUncertainty) / certified.coverageFactor;
}

/**
 * Decision on conformity: accept where the error lies within the limits drawn in by the guard band, reject where it lies
 * outside the limits moved out by it, and between the two neither is proven. Without a guard band nothing lies between.
 * Domain: U >= 0, k > 0, error and U in the unit of the limits, at least one limit. Source: ISO 14253-1, from memory.
 */
export function decideConformity(
  certified: CertifiedError,
  limits: Limits,
  rule: DecisionRule,
): ConformityDecision {
  const guardBand = guardBandOf(rule, certified);
  const standardUncertainty = certified.expandedUncertainty / certified.coverageFactor;
  const probability = conformityProbability({ value: certified.error, standardUncertainty }, limits);
  const accept = isWithin(certified.error, acceptanceLimits(limits, guardBand));
  const reject = !isWithin(certified.error, acceptanceLimits(limits, -guardBand));
  return { decision: accept ? 'accept' : reject ? 'reject' : 'between', guardBand, probability, rule };
}

function isWithin(value: number, { lower, upper }: Limits): boolean {
  return (lower === undefined || value >= lower) && (upper === undefined || value <= upper);
}
