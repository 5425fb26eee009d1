import type { Part } from '../shop/part';

/**
 * What one edge of a part costs to have when each piece is reground `regrinds` times before it is replaced: a die, and a blade
 * that is not reground, its price; else its price and its regrinds spread over all its edges. Minor units; null without a price.
 *
 *   (price + regrinds·regrind) / (regrinds + 1)
 *
 * Domain: regrinds whole, >= 0. Source: formula.
 */
export function edgePriceMinor(
  { priceMinor }: Pick<Part, 'priceMinor'>,
  { regrinds, regrindMinor }: { readonly regrinds: number; readonly regrindMinor: number },
): number | null {
  return priceMinor === null ? null : (priceMinor + regrinds * regrindMinor) / (regrinds + 1);
}

/** Regrinds that a piece has before it, where nothing says how many pay: all that it allows; none without a price for one. */
export function allowedRegrinds(
  { role, regrindLimit }: Pick<Part, 'role' | 'regrindLimit'>,
  { regrindMinor }: { readonly regrindMinor: number },
): number {
  return role === 'blade' && regrindMinor > 0 ? regrindLimit : 0;
}
