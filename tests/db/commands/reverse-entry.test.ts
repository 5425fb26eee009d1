import { beforeEach, expect, it } from 'vitest';
import type { Db } from '@/db/open';
import { DIE, dump, must, receive, sentence, testShop } from '../../support/db';
import { row, sender } from '../../support/send';

let db: Db;
let send: ReturnType<typeof sender>;

beforeEach(() => {
  db = testShop();
  send = sender(db);
});

const idOf = (kind: string) =>
  db.$client.prepare('SELECT id FROM entry WHERE kind = ? ORDER BY seq DESC').pluck().get(kind) as string;

it('Q32: what an entry did is undone, and entry and reversal both stay', () => {
  receive(db, 'D-56-01', DIE);
  const before = dump(db);
  const issue = must(send.issue('D-56-01'));
  must(send.reverse(issue.id, { reason: 'wrong drawer' }));
  expect(dump(db).tool).toEqual(before.tool);
  expect(dump(db).entry).toHaveLength((before.entry?.length ?? 0) + 2);
  expect(row(db, 'entry', 'reverses_id', issue.id)).toMatchObject({
    reason: 'wrong drawer',
    actor_id: 'robin',
  });
});

it('sent twice it counts once', () => {
  receive(db, 'D-56-01', DIE);
  const issue = must(send.issue('D-56-01'));
  must(send.reverse(issue.id, { entryId: 'reversal-1' }));
  const before = dump(db);
  expect(must(send.reverse(issue.id, { entryId: 'reversal-1' })).alreadyRecorded).toBe(true);
  expect(dump(db)).toEqual(before);
});

it('refuses a second reversal, a reversal of a reversal, and what later entries rest on', () => {
  receive(db, 'D-56-01', DIE);
  const issue = must(send.issue('D-56-01'));
  const back = must(send.giveBack('D-56-01'));
  const before = dump(db);
  expect(sentence(send.reverse(issue.id))).toBe(
    'Later entries rest on this one: take those back first, from the last back to the return.',
  );
  expect(sentence(send.reverse(idOf('tool-received')))).toBe(
    'Later entries rest on this one: take those back first, from the last back to the issue.',
  );
  expect(sentence(send.reverse('no-such-entry'))).toBe('There is no such entry to take back.');
  expect(dump(db)).toEqual(before);
  const reversal = must(send.reverse(back.id));
  expect(sentence(send.reverse(back.id))).toBe('This entry was already taken back.');
  expect(sentence(send.reverse(reversal.id))).toBe(
    'A reversal cannot be taken back; enter the matter again instead.',
  );
  expect(sentence(send.reverse(issue.id, { entryId: reversal.id }))).toBe(
    'This entry ID was already used for something else.',
  );
});

it('refuses to take back what other records still use', () => {
  receive(db, 'D-56-01', DIE);
  const before = dump(db);
  const part = db.$client
    .prepare(`SELECT id FROM entry WHERE kind = 'part-set' AND subject_id = 'die-56'`)
    .pluck()
    .get() as string;
  expect(sentence(send.reverse(part))).toBe(
    'Nothing was changed: other records still use this, or it names something that the shop does not know.',
  );
  expect(dump(db)).toEqual(before);
});

it('a receipt and its delivery on an order go back as one', () => {
  must(
    send.order({
      id: 'PO-7',
      partId: DIE.id,
      quantity: 2,
      placedOnDay: '2026-02-01',
      expectedOnDay: '2026-03-01',
    }),
  );
  const receipt = must(send.receive({ toolId: 'D-56-01', partId: DIE.id, hand: 'LH', orderId: 'PO-7' }));
  expect(row(db, 'purchase_order', 'id', 'PO-7')).toMatchObject({ received_quantity: 1 });
  expect(sentence(send.reverse(idOf('order-received')))).toBe(
    'This delivery was entered with D-56-01; take back the receipt of D-56-01 instead.',
  );
  must(send.reverse(receipt.id, { entryId: 'back-again' }));
  expect(row(db, 'purchase_order', 'id', 'PO-7')).toMatchObject({ received_quantity: 0 });
  expect(row(db, 'tool', 'id', 'D-56-01')).toBeUndefined();
  expect(must(send.reverse(receipt.id, { entryId: 'back-again' })).alreadyRecorded).toBe(true);
  must(send.receive({ toolId: 'D-56-01', partId: DIE.id, hand: 'LH', orderId: 'PO-7' }));
  expect(row(db, 'purchase_order', 'id', 'PO-7')).toMatchObject({ received_quantity: 1 });
});
