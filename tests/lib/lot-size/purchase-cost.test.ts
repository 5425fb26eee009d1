import fc from 'fast-check';
import { expect, it } from 'vitest';
import { orderableQuantity, plainTerms, purchaseCost } from '@/lib/lot-size/purchase-cost';

const priceBreaks = [
  { fromQuantity: 5, priceMinor: 90 },
  { fromQuantity: 10, priceMinor: 75 },
];

// source: hand. At 100, 90 from 5 on, 75 from 10 on. 4: 400. 9 all-units: 810; incremental: 400 + 5·90 = 850.
// 12 all-units: 900; incremental: 400 + 450 + 3·75 = 1 075.
it('prices an order by its breaks', () => {
  const all = { ...plainTerms(100), priceBreaks };
  const incremental = { ...all, breakKind: 'incremental' as const };
  expect([4, 9, 12].map((q) => purchaseCost(all, q))).toEqual([400, 810, 900]);
  expect([4, 9, 12].map((q) => purchaseCost(incremental, q))).toEqual([400, 850, 1075]);
  expect([purchaseCost(all, 0), purchaseCost(plainTerms(7), 3)]).toEqual([0, 21]);
});

// source: hand. Packs of 6, at least 10: 1 → 12, 12 → 12, 13 → 18.
it('orders whole packs from the least quantity on', () => {
  const terms = { packSize: 6, minQuantity: 10 };
  expect([0, 1, 12, 13].map((needed) => orderableQuantity(terms, needed))).toEqual([0, 12, 12, 18]);
});

// An incremental order never costs more than the same at the first price, nor less for one piece more.
it('falls with the breaks and grows with the pieces', () => {
  fc.assert(
    fc.property(fc.nat(40), (quantity) => {
      const terms = { ...plainTerms(100), priceBreaks, breakKind: 'incremental' as const };
      expect(purchaseCost(terms, quantity)).toBeLessThanOrEqual(100 * quantity);
      expect(purchaseCost(terms, quantity + 1)).toBeGreaterThan(purchaseCost(terms, quantity));
    }),
  );
});
