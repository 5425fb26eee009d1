import type { SaleTerms } from '../lot-size/purchase-cost';
import type { Offer } from '../shop/offer';
import type { Part } from '../shop/part';

/** One way of buying a part: from whom, for how much, on which terms. Price and lead time null where not written down. */
export interface PartOffer {
  readonly supplier: string;
  readonly priceMinor: number | null;
  readonly leadTimeDays: number | null;
  readonly terms: SaleTerms;
}

/** Every way of buying a part, the first supplier first. */
export function offersOf(part: Part): PartOffer[] {
  const { supplier, priceMinor, leadTimeDays } = part;
  const own: Offer = {
    ...{ supplier, priceMinor, leadTimeDays },
    packSize: part.packSize ?? 1,
    minQuantity: part.minQuantity ?? 1,
    breakKind: part.breakKind ?? 'all-units',
    priceBreaks: part.priceBreaks ?? [],
  };
  return [own, ...(part.offers ?? [])].map((offer) => ({
    supplier: offer.supplier,
    priceMinor: offer.priceMinor,
    leadTimeDays: offer.leadTimeDays,
    terms: termsOf(offer),
  }));
}

function termsOf({ priceMinor, breakKind, priceBreaks, packSize, minQuantity }: Offer): SaleTerms {
  return { unitPrice: priceMinor ?? 0, breakKind, priceBreaks, packSize, minQuantity };
}
