import { beforeEach, expect, it } from 'vitest';
import type { Db } from '@/db/open';
import { BLADE, BODY, DIE, dump, FLUID, must, QUARTER, RING, sentence, testShop } from '../../support/db';
import { row, sender } from '../../support/send';

const die = { toolId: 'D-56-01', partId: DIE.id, hand: 'LH' };
const counted = { known: 'counted', connectionId: '9-16-high', materialId: '316', ends: 10 };
let db: Db;
let send: ReturnType<typeof sender>;

beforeEach(() => {
  db = testShop();
  send = sender(db);
});

// source: hand. 10 ends × 10.5 turns = 105 turns behind it.
it('a die comes in with what it had cut before', () => {
  must(send.receive({ ...die, toolId: 'd 56–01', opening: counted }));
  expect(row(db, 'edge_use', 'tool_id', 'D-56-01')).toMatchObject({ ends: 10, exposure_micro: 105_000_000 });
  expect(row(db, 'edge', 'tool_id', 'D-56-01')).toMatchObject({ end: null, last_use: null });
});

it('a body has no edge', () => {
  must(send.receive({ toolId: 'BDY-A', partId: BODY.id }));
  expect(dump(db).edge).toEqual([]);
});

it('sent twice it counts once, on the order too', () => {
  must(
    send.order({
      id: 'PO-7',
      partId: DIE.id,
      quantity: 2,
      placedOnDay: '2026-02-01',
      expectedOnDay: '2026-03-01',
    }),
  );
  const receipt = { ...die, orderId: 'PO-7', entryId: 'x'.repeat(64), opening: counted };
  must(send.receive(receipt));
  const before = dump(db);
  expect(must(send.receive(receipt)).alreadyRecorded).toBe(true);
  expect(sentence(send.receive({ ...receipt, lot: 'L2' }))).toBe(
    'This entry ID was already used for something else.',
  );
  expect(dump(db)).toEqual(before);
  expect(row(db, 'purchase_order', 'id', 'PO-7')).toMatchObject({ received_quantity: 1 });
});

it('refuses in a sentence, and changes nothing', () => {
  must(send.receive(die));
  must(
    send.order({
      id: 'PO-8',
      partId: BLADE.id,
      quantity: 2,
      placedOnDay: '2026-02-01',
      expectedOnDay: '2026-03-01',
    }),
  );
  const before = dump(db);
  const next = { ...die, toolId: 'D-56-02' };
  expect([
    sentence(send.receive({ ...next, toolId: 'D_56' })),
    sentence(send.receive(die)),
    sentence(send.receive({ ...die, toolId: 'D-56-O1' })),
    sentence(send.receive({ ...next, partId: 'none' })),
    sentence(send.receive({ ...next, hand: 'RH' })),
    sentence(send.receive({ toolId: 'BDY-A', partId: BODY.id, hand: 'LH' })),
    sentence(send.receive({ toolId: 'G-56-GO-1', partId: RING.id, hand: 'LH' })),
    sentence(send.receive({ toolId: 'F-L01', partId: FLUID.id, opening: counted })),
    sentence(send.receive({ ...next, opening: { ...counted, connectionId: 'none' } })),
    sentence(send.receive({ ...next, opening: { ...counted, connectionId: QUARTER.id } })),
    sentence(send.receive({ ...next, opening: { ...counted, materialId: 'tin' } })),
    sentence(send.receive({ ...next, orderId: 'PO-9' })),
    sentence(send.receive({ ...next, orderId: 'PO-8' })),
  ]).toEqual([
    'A tool ID is 2 to 16 letters, digits and single dashes.',
    'D-56-01 is already in the record.',
    'D-56-O1 reads like D-56-01 (O and 0, I and 1 count as one). Choose another ID.',
    'Choose what it is: the shop knows no such part.',
    'Hand mismatch: 9/16 die must be LH, this one is marked RH. Do not put it away; send it back.',
    'Hand mismatch: coning body must be without a hand, this one is marked LH. Do not put it away; send it back.',
    'A gauge needs the day its calibration runs out.',
    'Only blades and dies are counted in ends.',
    'Say in which size and service its ends were counted.',
    '9/16 die does not serve 1⁄4 medium pressure.',
    'Say in which material its ends were counted.',
    'No order PO-9 is in the record.',
    'Order PO-8 is for another part than 9/16 die.',
  ]);
  expect(dump(db)).toEqual(before);
});

it('what is not in order is received into quarantine; a wrong hand does not count for its order', () => {
  const order = {
    id: 'PO-Q',
    partId: DIE.id,
    quantity: 1,
    placedOnDay: '2026-02-01',
    expectedOnDay: '2026-03-01',
  };
  must(send.order(order));
  const die = { partId: DIE.id, hand: 'RH', orderId: 'PO-Q' };
  must(send.receive({ ...die, toolId: 'D-56-91', takeWrongHand: true }));
  expect(row(db, 'tool', 'id', 'D-56-91')).toMatchObject({ state: 'quarantined', hand: 'RH' });
  expect(row(db, 'purchase_order', 'id', 'PO-Q')).toMatchObject({ received_quantity: 0, status: 'placed' });
  must(send.receive({ ...die, hand: 'LH', toolId: 'D-56-92', certificate: 'missing' }));
  expect(row(db, 'tool', 'id', 'D-56-92')).toMatchObject({
    ...{ state: 'quarantined', state_reason: 'No certificate came with it.' },
  });
  expect(row(db, 'purchase_order', 'id', 'PO-Q')).toMatchObject({
    ...{ received_quantity: 1, status: 'received', received_on_day: '2026-03-02' },
  });
});
