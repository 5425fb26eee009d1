import { beforeEach, expect, it } from 'vitest';
import { setNoun } from '@/db/commands/set-noun';
import type { Db } from '@/db/open';
import { DIE, dump, ENV, envelope, may, must, part, sentence, testShop } from '../../support/db';
import { row, sender } from '../../support/send';

const order = {
  id: 'PO-7',
  partId: DIE.id,
  quantity: 1,
  placedOnDay: '2026-02-01',
  expectedOnDay: '2026-03-01',
};
let db: Db;
let send: ReturnType<typeof sender>;

beforeEach(() => {
  db = testShop();
  send = sender(db);
});

it('the promised day stays when the order slips', () => {
  must(send.order(order, { entryId: 'order-once' }));
  must(send.slip('PO-7', '2026-03-20'));
  expect(must(send.order(order, { entryId: 'order-once' })).alreadyRecorded).toBe(true);
  expect(row(db, 'purchase_order', 'id', 'PO-7')).toMatchObject({
    ...{ promised_on_day: '2026-03-01', expected_on_day: '2026-03-20', received_quantity: 0 },
  });
});

// source: hand. A device that lost the answer asks again; meanwhile the order and its part were taken back as mistakes. What
// was sent was recorded then, and that is the answer; the same ID with another quantity is still something else.
it('a repeat is answered as recorded although its part has gone meanwhile', () => {
  const leave = may('set-up-shop');
  const spare = envelope();
  must(
    setNoun(db, leave, { noun: 'part', value: part({ id: 'spare', role: 'brush' }), envelope: spare }, ENV),
  );
  const spares = { ...order, partId: 'spare' };
  const first = must(send.order(spares, { entryId: 'order-lost' }));
  must(send.reverse(first.id));
  must(send.reverse(spare.id));
  expect(must(send.order(spares, { entryId: 'order-lost' }))).toEqual({ ...first, alreadyRecorded: true });
  expect(sentence(send.order({ ...spares, quantity: 2 }, { entryId: 'order-lost' }))).toBe(
    'This entry ID was already used for something else.',
  );
});

it('refuses in a sentence, and changes nothing', () => {
  must(send.order(order));
  const before = dump(db);
  expect([
    sentence(send.order({ ...order, id: 'PO-8', partId: 'none' })),
    sentence(send.order(order)),
    sentence(send.order({ ...order, id: 'PO-8', expectedOnDay: '2026-01-31' })),
    sentence(send.slip('PO-9', '2026-03-20')),
    sentence(send.slip('PO-7', '2026-01-31')),
  ]).toEqual([
    'Choose what is ordered.',
    'Order PO-7 is already in the record.',
    'The expected day lies before the order day.',
    'No order PO-9 is in the record.',
    'The expected day lies before the order day.',
  ]);
  expect(dump(db)).toEqual(before);
});

it('an order that came in full cannot slip, or come again', () => {
  must(send.order(order));
  must(send.receive({ toolId: 'D-56-01', partId: DIE.id, hand: 'LH', orderId: 'PO-7' }));
  expect([
    sentence(send.slip('PO-7', '2026-03-20')),
    sentence(send.receive({ toolId: 'D-56-02', partId: DIE.id, hand: 'LH', orderId: 'PO-7' })),
  ]).toEqual([
    'Order PO-7 has already been received in full.',
    'Order PO-7 has already been received in full.',
  ]);
  expect(row(db, 'tool', 'id', 'D-56-02')).toBeUndefined();
});
