import { z } from 'zod';
import { countField, form, listField, textField } from './field';

/** A price from so many pieces on. All-units: for every piece of the order; incremental: for those from there on. */
export const PriceBreakSchema = form({
  fromQuantity: countField('The quantity of a price break', { min: 2, max: 10_000 }),
  priceMinor: countField('The price of a price break', { max: 100_000_000 }),
});
export type PriceBreak = z.infer<typeof PriceBreakSchema>;

export const BREAK_KINDS = ['all-units', 'incremental'] as const;
export type BreakKind = (typeof BREAK_KINDS)[number];

/** How something is sold beside its price: in packs, from a least quantity, cheaper from so many on. */
export const termFields = {
  packSize: countField('The pack', { min: 1, max: 1000 }),
  minQuantity: countField('The least quantity', { min: 1, max: 10_000 }),
  breakKind: z.enum(BREAK_KINDS, { error: 'A price break is for all units or incremental.' }),
  priceBreaks: listField('The price breaks', PriceBreakSchema, 10),
};

/** One supplier's offer of a part. */
export const OfferSchema = form({
  supplier: textField('The supplier', 80).min(1, 'The supplier of an offer is needed.'),
  priceMinor: countField('The price', { max: 100_000_000 }).nullable(),
  leadTimeDays: countField('The lead time', { max: 1000 }).nullable(),
  ...termFields,
});
export type Offer = z.infer<typeof OfferSchema>;
