import { expect, it } from 'vitest';
import { listOpenOrders } from '@/db/queries/orders';
import { BLADE, DIE, must, testShop } from '../../support/db';
import { sender } from '../../support/send';

// source: hand. Two of two received: closed. One of three: open. The next to come first, then by number.
it('listOpenOrders gives what is still to come, the next first', () => {
  const db = testShop();
  const send = sender(db);
  const order = (id: string, expectedOnDay: string, change = {}) =>
    must(
      send.order({ id, partId: DIE.id, quantity: 1, placedOnDay: '2026-02-01', expectedOnDay, ...change }),
    );
  order('PO-4', '2026-03-20');
  order('PO-3', '2026-03-20', { quantity: 3, partId: BLADE.id });
  order('PO-2', '2026-03-10');
  order('PO-1', '2026-03-12', { quantity: 2 });
  for (const toolId of ['D-56-01', 'D-56-02'])
    must(send.receive({ toolId, partId: DIE.id, hand: 'LH', orderId: 'PO-1' }));
  must(send.receive({ toolId: 'B-56-01', partId: BLADE.id, orderId: 'PO-3' }));
  must(send.slip('PO-2', '2026-04-01'));
  expect(
    listOpenOrders(db).map(({ id, quantity, receivedQuantity, expectedOnDay }) => [
      id,
      quantity,
      receivedQuantity,
      expectedOnDay,
    ]),
  ).toEqual([
    ['PO-3', 3, 1, '2026-03-20'],
    ['PO-4', 1, 0, '2026-03-20'],
    ['PO-2', 1, 0, '2026-04-01'],
  ]);
});
