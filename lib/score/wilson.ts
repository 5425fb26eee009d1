import { invariant } from '../invariant';

/** Standard normal figure passed with probability 2.5 %. Source: formula, Φ⁻¹(0.975). */
const Z = 1.959963984540054;

/**
 * 95 % interval for a share seen `hits` times in `count` (Wilson): honest for few cases and for shares near 0 and 1.
 * centre = (p + z²/2n)/(1 + z²/n), half width = z/(1 + z²/n)·√(p(1 − p)/n + z²/4n²).
 * Domain: 0 <= hits <= count, count > 0; neither need be whole (an effective number of cases). Source: E. B. Wilson, JASA 22 (1927).
 */
export function wilsonInterval(hits: number, count: number): { low: number; high: number } {
  invariant(count > 0 && hits >= 0 && hits <= count, 'an interval needs hits among at least one case');
  const share = hits / count;
  const shrink = 1 + (Z * Z) / count;
  const centre = (share + (Z * Z) / (2 * count)) / shrink;
  const half = (Z / shrink) * Math.sqrt((share * (1 - share)) / count + (Z * Z) / (4 * count * count));
  return { low: Math.max(0, centre - half), high: Math.min(1, centre + half) };
}
