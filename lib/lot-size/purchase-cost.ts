import { invariant } from '../invariant';
import type { BreakKind, PriceBreak } from '../shop/offer';

/** How something is sold: price, breaks, packs, least quantity. Money in minor units. */
export interface SaleTerms {
  readonly unitPrice: number;
  readonly breakKind: BreakKind;
  readonly priceBreaks: readonly PriceBreak[];
  /** Sold in packs of so many. */
  readonly packSize: number;
  /** Least quantity of one order. */
  readonly minQuantity: number;
}

/** Sold singly at one price. */
export function plainTerms(unitPrice: number): SaleTerms {
  return { unitPrice, breakKind: 'all-units', priceBreaks: [], packSize: 1, minQuantity: 1 };
}

/**
 * What an order of so many units costs, the order's own cost left out. All-units: the last break reached prices every
 * unit; incremental: each unit at the price of its own tier. Domain: quantity a whole number >= 0. Source: formula.
 * @example purchaseCost({ unitPrice: 100, breakKind: 'incremental', priceBreaks: [{ fromQuantity: 3, priceMinor: 80 }], packSize: 1, minQuantity: 1 }, 4) // => 360
 */
export function purchaseCost({ unitPrice, breakKind, priceBreaks }: SaleTerms, quantity: number): number {
  invariant(quantity >= 0, 'purchaseCost requires a quantity of 0 or more');
  const tiers = [...priceBreaks].sort((a, b) => a.fromQuantity - b.fromQuantity);
  if (breakKind === 'all-units') {
    const reached = tiers.filter(({ fromQuantity }) => quantity >= fromQuantity).at(-1);
    return quantity * (reached?.priceMinor ?? unitPrice);
  }
  let cost = 0;
  let left = quantity;
  for (const { fromQuantity, priceMinor } of tiers.reverse()) {
    const units = Math.max(0, left - fromQuantity + 1);
    cost += units * priceMinor;
    left -= units;
  }
  return cost + left * unitPrice;
}

/**
 * The least quantity of at least `needed` that can be ordered: whole packs, the least quantity reached. 0 for 0.
 * Domain: whole numbers. Source: formula.
 * @example orderableQuantity({ packSize: 5, minQuantity: 12 }, 3) // => 15
 */
export function orderableQuantity(
  { packSize, minQuantity }: Pick<SaleTerms, 'packSize' | 'minQuantity'>,
  needed: number,
): number {
  return needed <= 0 ? 0 : Math.ceil(Math.max(needed, minQuantity) / packSize) * packSize;
}
