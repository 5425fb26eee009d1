import { expect, it } from 'vitest';
import { cancelOrder, chaseOrder } from '@/db/commands/chase-order';
import { slipOrder } from '@/db/commands/keep-orders';
import {
  findOrder,
  listClosedOrders,
  listDeliveries,
  listOpenOrders,
  listOrderIds,
} from '@/db/queries/orders';
import { supplierRecords } from '@/lib/lead-time/supplier-record';
import { SlipOrderInput } from '@/lib/shop/command-input';
import { CancelOrderInput, ChaseOrderInput } from '@/lib/shop/order-input';
import { DIE, ENV, entered, may, must, NOW_MS, sentence, testShop } from '../../support/db';
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

// source: hand. Said on the evening of 2 March by the device, sent at once and again after midnight in a shop two hours ahead
// of UTC: one entry, of 2 March in the shop. 21:30 UTC is 23:30 there, 22:30 UTC is half past midnight.
it('a chase, a new day or a cancelling sent again after midnight is the same entry, of the day it was made', () => {
  const evening = Date.UTC(2026, 2, 2, 21, 30);
  const at = (nowMs: number) => ({ nowMs, utcOffsetMinutes: 120 });
  const db = testShop();
  const leave = may('keep-orders');
  for (const id of ['PO-1', 'PO-2', 'PO-3']) must(sender(db).order({ ...order, id }));
  const stamp = () => entered({ deviceAtMs: evening });
  const chase = ChaseOrderInput.parse({ ...stamp(), orderId: 'PO-1', confirmedForDay: null });
  const slip = SlipOrderInput.parse({ ...stamp(), orderId: 'PO-2', expectedOnDay: '2026-03-20' });
  const cancel = CancelOrderInput.parse({ ...stamp(), orderId: 'PO-3' });
  const sendAll = (nowMs: number) =>
    [
      chaseOrder(db, leave, chase, at(nowMs)),
      slipOrder(db, leave, slip, at(nowMs)),
      cancelOrder(db, leave, cancel, at(nowMs)),
    ].map((result) => must(result).alreadyRecorded);
  expect(sendAll(evening + 1000)).toEqual([false, false, false]);
  expect(sendAll(evening + 3_600_000)).toEqual([true, true, true]);
  expect(findOrder(db, 'PO-1')?.chasedOnDay).toBe('2026-03-02');
  expect(findOrder(db, 'PO-2')?.statedOnDay).toBe('2026-03-02');
  const other = { ...slip, expectedOnDay: '2026-03-21' };
  expect(sentence(slipOrder(db, leave, other, at(evening)))).toMatch(/already used/);
});

// source: hand. A device whose clock runs a day ahead says nothing about tomorrow: never later than the server's day.
it('takes no day from a clock that runs ahead', () => {
  const db = testShop();
  must(sender(db).order({ ...order, id: 'PO-1' }));
  const ahead = { ...entered({ deviceAtMs: NOW_MS + 86_400_000 }), orderId: 'PO-1', confirmedForDay: null };
  must(chaseOrder(db, may('keep-orders'), ChaseOrderInput.parse(ahead), ENV));
  expect(findOrder(db, 'PO-1')?.chasedOnDay).toBe('2026-03-02');
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
