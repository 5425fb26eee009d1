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
  const pieces = leastWith(mean, service);
  return { pieces, probability: poissonCdf(mean, pieces) };
}

/**
 * Pieces short on average with so many on the shelf: E[(N − s)⁺] = (mean − s)·P(N > s) + mean·P(N = ⌊s⌋), never below 0.
 * Domain: mean >= 0.
 */
export function poissonLoss(mean: number, pieces: number): number {
  const short = (mean - pieces) * (1 - poissonCdf(mean, pieces));
  return Math.max(0, short + mean * poissonProbability(mean, Math.floor(pieces)));
}

/**
 * Poisson figure at a chance u: the smallest k with P(N <= k) >= u. For drawing demand that nobody has planned yet.
 * Domain: mean >= 0, 0 <= u < 1.
 */
export function poissonQuantile(mean: number, u: number): number {
  invariant(
    mean >= 0 && u >= 0 && u < 1,
    'poissonQuantile requires a mean of 0 or more and a chance below 1',
  );
  if (mean > ADDED_UP_MAX) return leastWith(mean, u);
  let k = 0;
  let probability = Math.exp(-mean);
  let sum = probability;
  while (sum < u && (k < mean || sum + probability > sum)) {
    k++;
    probability *= mean / k;
    sum += probability;
  }
  return k;
}

/** Up to this mean the chances are added up one by one; beyond, the first of them is too small to be held. */
const ADDED_UP_MAX = 500;

/** Smallest k with P(N <= k) >= p: between two figures that lie on either side of it, halved. */
function leastWith(mean: number, p: number): number {
  let above = Math.ceil(mean);
  for (let step = 1; poissonCdf(mean, above) < p; step *= 2) above += Math.ceil(step * Math.sqrt(mean + 1));
  let below = -1;
  while (above - below > 1) {
    const middle = Math.floor((below + above) / 2);
    if (poissonCdf(mean, middle) < p) below = middle;
    else above = middle;
  }
  return above;
}
