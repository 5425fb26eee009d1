import { expect, it } from 'vitest';
import { OfferSchema, PriceBreakSchema } from '@/lib/shop/offer';

const offer = {
  ...{ supplier: 'Ninefold Dies', priceMinor: 12_000, leadTimeDays: 28, packSize: 1, minQuantity: 1 },
  ...{ breakKind: 'all-units', priceBreaks: [{ fromQuantity: 5, priceMinor: 9_000 }] },
};

it('takes an offer, and refuses one without a supplier, a pack of none, a break that cannot be read', () => {
  expect(OfferSchema.parse(offer)).toEqual(offer);
  const issue = (change: object) => OfferSchema.safeParse({ ...offer, ...change }).error?.issues[0]?.message;
  expect([issue({ supplier: '' }), issue({ packSize: 0 }), issue({ breakKind: 'some' })]).toEqual([
    'The supplier of an offer is needed.',
    'The pack must be at least 1.',
    'A price break is for all units or incremental.',
  ]);
  expect(PriceBreakSchema.safeParse({ fromQuantity: Number.NaN, priceMinor: 1 }).success).toBe(false);
});
