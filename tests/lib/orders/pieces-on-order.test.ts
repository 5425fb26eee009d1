import { expect, it } from 'vitest';
import { piecesOnOrder } from '@/lib/orders/pieces-on-order';
import { orderFacts } from '../../support/shop-record';

// source: hand. Five ordered, three of them here: two to come. Two and four of the same part: six; another part's count for none.
it('counts the pieces of a part that have not come yet', () => {
  const orders = [
    orderFacts({ id: 'PO-1', partId: 'die-a', quantity: 5, receivedQuantity: 3 }),
    orderFacts({ id: 'PO-2', partId: 'die-a', quantity: 4, receivedQuantity: 0 }),
    orderFacts({ id: 'PO-3', partId: 'die-b', quantity: 7, receivedQuantity: 0 }),
  ];
  expect(piecesOnOrder({ orders }, 'die-a')).toBe(6);
  expect(piecesOnOrder({ orders }, 'die-c')).toBe(0);
  expect(piecesOnOrder({ orders: [] }, 'die-a')).toBe(0);
});
