import { expect, it } from 'vitest';
import { decideReceipt } from '@/lib/receive/decide-receipt';
import { ReceiveToolInput } from '@/lib/shop/command-input';
import { DIE, entered, HIGH, MATERIALS, must, RING, sentence } from '../../support/db';

const counted = { known: 'counted', connectionId: HIGH.id, materialId: '316', ends: 10 };
const facts = (fields: object = {}, over: object = {}) => ({
  input: ReceiveToolInput.parse({
    ...entered(),
    ...{ toolId: 'D-56-01', partId: DIE.id, hand: 'LH', receivedOnDay: '2026-03-02' },
    ...fields,
  }),
  ...{ toolId: 'D-56-01', part: DIE, connection: HIGH, material: MATERIALS[0], order: undefined },
  ...{ existingIds: [] as string[] },
  ...over,
});

it('takes a die of the right hand', () => {
  expect(must(decideReceipt(facts()))).toMatchObject({
    partId: DIE.id,
    role: 'die',
    hand: 'LH',
    opening: { known: 'new' },
  });
});

// source: hand. 10 ends × 10.5 turns.
it('works out what ends already cut have cost', () => {
  expect(must(decideReceipt(facts({ opening: counted }))).opening).toMatchObject({
    exposureMicro: 105_000_000,
  });
});

it('a right-hand look-alike is refused at the box', () => {
  expect(sentence(decideReceipt(facts({ hand: 'RH' })))).toBe(
    'Hand mismatch: 9/16 die must be LH, this one is marked RH. Do not put it away; send it back.',
  );
  expect(sentence(decideReceipt(facts({ hand: null })))).toBe(
    'Hand mismatch: 9/16 die must be LH, this one is marked with none. Do not put it away; send it back.',
  );
});

it('an ID that reads like another is refused', () => {
  expect(sentence(decideReceipt(facts({}, { existingIds: ['D-56-O1'] })))).toBe(
    'D-56-01 reads like D-56-O1 (O and 0, I and 1 count as one). Choose another ID.',
  );
});

it('a gauge without a due day, and counts in what the shop does not know, are refused', () => {
  expect([
    sentence(decideReceipt(facts({}, { part: RING }))),
    sentence(decideReceipt(facts({ opening: counted }, { connection: undefined }))),
    sentence(decideReceipt(facts({ opening: counted }, { material: undefined }))),
    sentence(decideReceipt(facts({ opening: counted }, { connection: { ...HIGH, id: '1-high' } }))),
  ]).toEqual([
    'A gauge needs the day its calibration runs out.',
    'Say in which size and service its ends were counted.',
    'Say in which material its ends were counted.',
    '9/16 die does not serve 9⁄16 high pressure.',
  ]);
});

it('an order must be known, and for this part', () => {
  const order = {
    id: 'PO-1',
    partId: 'blade-56',
    quantity: 1,
    placedOnDay: '2026-02-01',
    expectedOnDay: '2026-03-01',
  };
  expect(sentence(decideReceipt(facts({ orderId: 'PO-1' })))).toBe('No order PO-1 is in the record.');
  expect(sentence(decideReceipt(facts({ orderId: 'PO-1' }, { order })))).toBe(
    'Order PO-1 is for another part than 9/16 die.',
  );
  expect(decideReceipt(facts({ orderId: 'PO-1' }, { order: { ...order, partId: DIE.id } })).ok).toBe(true);
});

it('a wrong hand that really is so, and a missing or wrong certificate, go into quarantine with the reason', () => {
  expect(must(decideReceipt(facts({ hand: 'RH', takeWrongHand: true })))).toMatchObject({
    hand: 'RH',
    quarantine: 'Wrong hand: marked RH, must be LH. To be sent back.',
  });
  expect(must(decideReceipt(facts({ certificate: 'missing' })))).toMatchObject({
    certificate: 'missing',
    quarantine: 'No certificate came with it.',
  });
  expect(must(decideReceipt(facts({ certificate: 'wrong' }, { part: RING })))).toMatchObject({
    quarantine: 'Its certificate is not the right one.',
  });
  expect(must(decideReceipt(facts({ certificate: 'in-order' })))).not.toHaveProperty('quarantine');
});
