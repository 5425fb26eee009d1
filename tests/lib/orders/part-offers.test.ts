import { expect, it } from 'vitest';
import { offersOf } from '@/lib/orders/part-offers';
import { DIE } from '../../support/db';

it('puts the part’s own supplier first, plain where nothing else is said, then the others', () => {
  const other = {
    ...{ supplier: 'Second Source', priceMinor: 9_000, leadTimeDays: 10, packSize: 2, minQuantity: 4 },
    ...{ breakKind: 'incremental' as const, priceBreaks: [{ fromQuantity: 6, priceMinor: 8_000 }] },
  };
  const part = { ...DIE, supplier: 'Ninefold Dies', priceMinor: 12_000, leadTimeDays: 28, offers: [other] };
  const [own, second] = offersOf(part);
  expect(own).toEqual({
    ...{ supplier: 'Ninefold Dies', priceMinor: 12_000, leadTimeDays: 28 },
    terms: { unitPrice: 12_000, breakKind: 'all-units', priceBreaks: [], packSize: 1, minQuantity: 1 },
  });
  expect(second).toMatchObject({
    supplier: 'Second Source',
    terms: { packSize: 2, minQuantity: 4, unitPrice: 9_000 },
  });
  expect(offersOf(DIE)).toHaveLength(1);
});
