import { invariant } from '../invariant';

/**
 * Interval that meets a target reliability, when intervals of a known length ended within tolerance in a share of cases
 * and gauges go out of tolerance at a constant rate.  I_new = I_old · ln(R_target) / ln(R_observed)
 * Symbols: I, interval in days (or ends); R, share still within tolerance at its end. Domain: 0 < R < 1 for the target,
 * 0 < R_observed <= 1, I > 0. None ever out (R_observed = 1): infinite, that is, the formula has nothing to say.
 * Source: published, from memory. NCSLI RP-1 and the NASA measurement handbook, exponential reliability model.
 * @example reliabilityInterval({ interval: 12, observed: 0.9, target: 0.9 }) // => 12
 */
export function reliabilityInterval(asked: {
  readonly interval: number;
  readonly observed: number;
  readonly target: number;
}): number {
  const { interval, observed, target } = asked;
  invariant(
    interval > 0 && target > 0 && target < 1,
    'reliabilityInterval: interval above 0, target in (0, 1)',
  );
  invariant(observed > 0 && observed <= 1, 'reliabilityInterval: observed share in (0, 1]');
  return observed === 1 ? Number.POSITIVE_INFINITY : (interval * Math.log(target)) / Math.log(observed);
}

/**
 * Share of intervals that ended within tolerance, k out of n having been found out: 1 − k/n. With every one found out the
 * share would be 0 and no interval follows; half a result is then allowed to the good side.
 * Domain: n >= 1, 0 <= k <= n. Source: formula; the half is common practice, no source.
 * @example observedReliability({ outCount: 1, count: 10 }) // => 0.9
 */
export function observedReliability({ outCount, count }: { outCount: number; count: number }): number {
  invariant(count >= 1 && outCount >= 0 && outCount <= count, 'observedReliability requires k of at least 1');
  return Math.max(1 - outCount / count, 0.5 / count);
}
