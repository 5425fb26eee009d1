import { expect, it } from 'vitest';
import { cancelOrder, chaseOrder } from '@/db/commands/chase-order';
import {
  findOrder,
  listClosedOrders,
  listDeliveries,
  listOpenOrders,
  listOrderIds,
} from '@/db/queries/orders';
import { supplierRecords } from '@/lib/lead-time/supplier-record';
import { CancelOrderInput, ChaseOrderInput } from '@/lib/shop/order-input';
import { DIE, ENV, entered, may, must, testShop } from '../../support/db';
import { sender } from '../../support/send';

const order = { partId: DIE.id, quantity: 2, placedOnDay: '2026-02-01', expectedOnDay: '2026-02-21' };

// source: hand. Promised for 20 days after placing, all there after 29: nine days late, whatever was said in between.
it('Q3: however often an order slips, the supplier is judged by its first promise', () => {
  const db = testShop();
  const send = sender(db);
  must(send.order({ ...order, id: 'PO-1', supplier: 'Ninefold Dies' }));
  must(send.slip('PO-1', '2026-02-27'));
  const chase = { ...entered(), orderId: 'PO-1', onDay: '2026-02-26', confirmedForDay: '2026-03-02' };
  must(chaseOrder(db, may('keep-orders'), ChaseOrderInput.parse(chase), ENV));
  expect(findOrder(db, 'PO-1')).toMatchObject({ promisedOnDay: '2026-02-21', expectedOnDay: '2026-03-02' });
  for (const toolId of ['D-56-01', 'D-56-02'])
    must(send.receive({ toolId, partId: DIE.id, hand: 'LH', orderId: 'PO-1', receivedOnDay: '2026-03-02' }));
  const [record] = supplierRecords(listDeliveries(db));
  expect(record).toMatchObject({ supplier: 'Ninefold Dies', orders: 1, onTime: 0, lateDaysWorst: 9 });
  expect(record?.quotedDaysMean).toBe(20);
  expect(record?.achievedDaysMean).toBe(29);
});

it('a cancelled order is open no more, and its number stays taken', () => {
  const db = testShop();
  must(sender(db).order({ ...order, id: 'PO-1' }));
  const input = CancelOrderInput.parse({ ...entered(), orderId: 'PO-1', onDay: '2026-03-02' });
  must(cancelOrder(db, may('keep-orders'), input, ENV));
  expect(listOpenOrders(db)).toEqual([]);
  expect(listClosedOrders(db)).toMatchObject([{ id: 'PO-1', status: 'cancelled' }]);
  expect(listOrderIds(db)).toEqual(['PO-1']);
});
