import { expect, it } from 'vitest';
import { nextOrderIds } from '@/lib/orders/next-order-id';

// source: hand.
it('counts on from the last number that the shop has', () => {
  expect(nextOrderIds(['PO-118', 'PO-120', 'PO-119'], 2)).toEqual(['PO-121', 'PO-122']);
  expect(nextOrderIds(['A-007', 'spring order'], 1)).toEqual(['A-008']);
  expect(nextOrderIds([], 2)).toEqual(['PO-1', 'PO-2']);
});
