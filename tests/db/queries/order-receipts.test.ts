import { expect, it } from 'vitest';
import { listOrderReceipts } from '@/db/queries/order-receipts';
import { DIE, must, testShop } from '../../support/db';
import { sender } from '../../support/send';

// source: hand. Two pieces came on the order: one of the wrong hand, set aside at the door; one that came on none is not its own.
it('lists what came on an order, and what was set aside at the door', () => {
  const db = testShop();
  const send = sender(db);
  const days = { placedOnDay: '2026-02-01', expectedOnDay: '2026-03-01' };
  must(send.order({ id: 'PO-1', partId: DIE.id, quantity: 2, ...days }));
  must(send.receive({ toolId: 'D-56-01', partId: DIE.id, hand: 'LH', orderId: 'PO-1', lot: 'L-1' }));
  must(send.receive({ toolId: 'D-56-02', partId: DIE.id, hand: 'RH', orderId: 'PO-1', takeWrongHand: true }));
  must(send.receive({ toolId: 'D-56-03', partId: DIE.id, hand: 'LH' }));
  expect(listOrderReceipts(db, 'PO-1')).toEqual([
    { toolId: 'D-56-01', onDay: '2026-03-02', lot: 'L-1', quarantine: null },
    { toolId: 'D-56-02', onDay: '2026-03-02', lot: '', quarantine: expect.stringContaining('Wrong hand') },
  ]);
});
