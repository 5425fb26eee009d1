import { expect, it } from 'vitest';
import { evolveOrder } from '@/lib/ledger/order-history';
import { must, sentence } from '../../support/db';
import { entry } from '../../support/entry';

const order = {
  id: 'PO-1',
  partId: 'die-56',
  quantity: 3,
  placedOnDay: '2026-02-01',
  expectedOnDay: '2026-03-01',
};
const placed = must(evolveOrder(undefined, entry('order-placed', 'PO-1', order)));
const came = (quantity: number) => entry('order-received', 'PO-1', { quantity });

it('keeps the promised day when it slips, and counts what comes in', () => {
  const slipped = must(evolveOrder(placed, entry('order-slipped', 'PO-1', { expectedOnDay: '2026-03-20' })));
  expect(slipped).toMatchObject({
    promisedOnDay: '2026-03-01',
    expectedOnDay: '2026-03-20',
    receivedQuantity: 0,
  });
  // source: hand. 1 + 2 of 3.
  expect(must(evolveOrder(must(evolveOrder(slipped, came(1))), came(2))).receivedQuantity).toBe(3);
});

it('refuses too many, a second placing, and entries about something else', () => {
  expect([
    sentence(evolveOrder(placed, came(4))),
    sentence(evolveOrder(must(evolveOrder(placed, came(3))), came(1))),
    sentence(evolveOrder(placed, entry('order-placed', 'PO-1', order))),
    sentence(evolveOrder(undefined, came(1))),
    sentence(evolveOrder(placed, entry('job-closed', 'PO-1', { how: 'done' }))),
  ]).toEqual([
    'Order PO-1 is for 3; 4 would be too many.',
    'Order PO-1 has already been received in full.',
    'Order PO-1 is already in the record.',
    'No order PO-1 is in the record.',
    'An entry "job-closed" cannot be about an order.',
  ]);
});
