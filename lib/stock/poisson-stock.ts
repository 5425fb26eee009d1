import { invariant } from '../invariant';
import { gammaQ } from '../numeric/gamma';
import { lnGamma } from '../numeric/ln-gamma';

/**
 * Poisson, chance of exactly k: what a slow item's demand is like, dies by ones and twos. Domain: mean >= 0, k whole.
 * Source: formula.
 * @example poissonProbability(0, 0) // => 1
 */
export function poissonProbability(mean: number, k: number): number {
  if (!Number.isInteger(k) || k < 0) return 0;
  if (mean === 0) return k === 0 ? 1 : 0;
  return Math.exp(k * Math.log(mean) - mean - lnGamma(k + 1));
}

/**
 * Poisson, chance of at most k: that k pieces suffice while so many are used on average. Domain: mean >= 0.
 * Source: formula, the upper incomplete gamma function Q(k + 1, mean).
 * @example poissonCdf(0, 5) // => 1
 */
export function poissonCdf(mean: number, k: number): number {
  invariant(mean >= 0, 'poissonCdf requires a mean of 0 or more');
  if (k < 0) return 0;
  return mean === 0 ? 1 : gammaQ(Math.floor(k) + 1, mean);
}

/**
 * Fewest pieces that suffice with probability `service`, and how sure that many are. The reorder point of a slow item, the
 * mean being its demand over the lead time. Domain: mean >= 0, 0 <= service < 1. Source: formula.
 */
export function poissonStock(
  mean: number,
  service: number,
): { readonly pieces: number; readonly probability: number } {
  invariant(service >= 0 && service < 1, 'poissonStock requires a service level from 0 to below 1');
  let pieces = 0;
  while (poissonCdf(mean, pieces) < service) pieces++;
  return { pieces, probability: poissonCdf(mean, pieces) };
}

/** Pieces short on average with so many on the shelf: E[(N − pieces)⁺] = (mean − pieces)·P(N > pieces) + mean·P(N = pieces). */
export function poissonLoss(mean: number, pieces: number): number {
  return (mean - pieces) * (1 - poissonCdf(mean, pieces)) + mean * poissonProbability(mean, pieces);
}

/**
 * Poisson figure at a chance u: the smallest k with P(N <= k) >= u. For drawing demand that nobody has planned yet.
 * Domain: mean >= 0, 0 <= u < 1.
 */
export function poissonQuantile(mean: number, u: number): number {
  let k = 0;
  let probability = Math.exp(-mean);
  let sum = probability;
  while (sum < u && k < 100_000) {
    k++;
    probability *= mean / k;
    sum += probability;
  }
  return k;
}
