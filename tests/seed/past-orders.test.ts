import { expect, it } from 'vitest';
import { listOrderReceipts } from '@/db/queries/order-receipts';
import { listDeliveries } from '@/db/queries/orders';
import { achievedDays, quotedDays } from '@/lib/lead-time/delivery';
import { demoShop, rowsOf } from '@/tests/support/demo-shop';

const db = demoShop();
const deliveries = listDeliveries(db);

// source: hand. The story: 14 orders with the die maker, 2 with the fluid supplier; the 9/16 die of month 16 was promised in 28
// days and came after 50.
it('has past orders that say something of the suppliers', () => {
  const count = (supplier: string) => deliveries.filter((delivery) => delivery.supplier === supplier).length;
  expect([count('Ninefold Dies'), count('Marrowfen Fluids')]).toEqual([14, 2]);
  const slipped = deliveries.find(({ orderId }) => orderId === 'PO-041');
  expect(slipped && [quotedDays(slipped), achievedDays(slipped)]).toEqual([28, 50]);
});

// source: hand. Month 12: a right-hand die in the box of left-hand ones was set aside at the door and went back; four right ones
// fill the order.
it('set a right-hand die aside at the door', () => {
  const set = listOrderReceipts(db, 'PO-051').filter(({ quarantine }) => quarantine !== null);
  expect(set.map(({ toolId }) => toolId)).toEqual(['D-56-17']);
  expect(rowsOf(db, "SELECT hand, state FROM tool WHERE id = 'D-56-17'")).toEqual([
    { hand: 'RH', state: 'scrapped' },
  ]);
  expect(listOrderReceipts(db, 'PO-051')).toHaveLength(5);
});
