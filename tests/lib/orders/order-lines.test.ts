import { expect, it } from 'vitest';
import { orderBook } from '@/lib/orders/order-lines';
import { computeOutlook } from '@/lib/outlook/outlook';
import { lineFacts, shopRecord } from '../../support/shop-record';

// source: hand. An empty crib with one line: a die, a blade and every lasting item are to be ordered, the soonest first; what is
// drafted is not proposed again.
it('gathers edges, fluids and missing items into one list', () => {
  const facts = shopRecord({ lines: [lineFacts()] });
  const book = orderBook(computeOutlook(facts));
  const roles = book.toOrder.map(({ part }) => part.role);
  expect(roles).toEqual(expect.arrayContaining(['die', 'blade', 'go-ring', 'collet']));
  const days = book.toOrder.map(({ orderByOnDay }) => orderByOnDay ?? '');
  expect(days).toEqual([...days].sort());
  expect(book.toOrder.every(({ quantity }) => quantity > 0)).toBe(true);
  const die = book.toOrder.find(({ part }) => part.role === 'die');
  expect(die?.shown?.stockOutProbability).toBe(1);
  const drafts = book.toOrder.map(({ part, quantity }, n) => ({ id: `PO-${n}`, partId: part.id, quantity }));
  expect(orderBook(computeOutlook({ ...facts, drafts })).toOrder).toEqual([]);
});

// source: hand. One ring is missing; its supplier sells none under three, in packs of two: four, at 50.00 each and 40.00 from
// four on, so 160.00.
it('orders what is missing in the packs and least quantities that it is sold in', () => {
  const sold = { packSize: 2, minQuantity: 3, priceMinor: 5_000, breakKind: 'all-units' as const };
  const priceBreaks = [{ fromQuantity: 4, priceMinor: 4_000 }];
  const parts = shopRecord().parts.map((part) =>
    part.role === 'go-ring' ? { ...part, ...sold, priceBreaks } : part,
  );
  const { toOrder } = orderBook(computeOutlook(shopRecord({ parts, lines: [lineFacts()] })));
  const ring = toOrder.find(({ part }) => part.role === 'go-ring');
  expect(ring).toMatchObject({ quantity: 4, priceMinor: 16_000 });
});
