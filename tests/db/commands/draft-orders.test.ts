import { beforeEach, expect, it } from 'vitest';
import { approveOrders, draftOrders } from '@/db/commands/draft-orders';
import { placeOrder } from '@/db/commands/keep-orders';
import type { Db } from '@/db/open';
import { listDrafts, listOpenOrders } from '@/db/queries/orders';
import type { Actor } from '@/lib/access/actor';
import { PlaceOrderInput } from '@/lib/shop/command-input';
import { ApproveOrdersInput, DraftOrdersInput } from '@/lib/shop/order-input';
import { BLADE, DIE, dump, ENV, entered, may, must, sentence, testShop } from '../../support/db';

const LEAD: Actor = { personId: 'robin', name: 'Robin Vale', role: 'lead' };
const draft = (id: string, partId: string, quantity = 2) => ({
  ...{ id, partId, quantity, draftedOnDay: '2026-03-02', supplier: 'Ninefold Dies', unitPriceMinor: 12_000 },
  ...{ leadTimeDays: 28, why: 'J-1.1' },
});
let db: Db;
const draftAll = (drafts: object[], over = {}) =>
  draftOrders(db, may('keep-orders'), DraftOrdersInput.parse({ ...entered(over), drafts }), ENV);
const approve = (orders: object[], actor = LEAD) =>
  approveOrders(db, may('approve-orders', actor), ApproveOrdersInput.parse({ ...entered(), orders }), ENV);

beforeEach(() => {
  db = testShop();
});

it('drafts several at once, counts the same sending once, and all or none', () => {
  const drafts = [draft('PO-1', DIE.id), draft('PO-2', BLADE.id, 4)];
  expect(must(draftAll(drafts, { entryId: 'drafts-once' })).count).toBe(2);
  must(draftAll(drafts, { entryId: 'drafts-once' }));
  expect(listDrafts(db).map(({ id, status, quantity }) => [id, status, quantity])).toEqual([
    ['PO-1', 'drafted', 2],
    ['PO-2', 'drafted', 4],
  ]);
  const before = dump(db);
  expect(sentence(draftAll([draft('PO-3', DIE.id), draft('PO-4', 'none')]))).toBe('Choose what is ordered.');
  expect(sentence(draftAll([]))).toBe('Tick at least one part.');
  expect(dump(db)).toEqual(before);
});

// source: hand. One sending is one list: part of it, or more than it, under the same ID is something else.
it('refuses a longer or shorter list under an ID that was used', () => {
  const drafts = [draft('PO-1', DIE.id), draft('PO-2', BLADE.id, 4)];
  must(draftAll(drafts, { entryId: 'drafts-once' }));
  const before = dump(db);
  for (const other of [drafts.slice(0, 1), [...drafts, draft('PO-3', DIE.id)]])
    expect(sentence(draftAll(other, { entryId: 'drafts-once' }))).toBe(
      'This entry ID was already used for something else.',
    );
  expect(dump(db)).toEqual(before);
});

// source: hand. One form sent twice is one deed: by its second sending the first has taken the order numbers, and what it
// drafted is no longer to be ordered. What the person chose, parts and quantities, is what tells two sendings apart.
it('takes a double press once, though numbers, prices and what is left to order have moved meanwhile', () => {
  const asked = [
    { partId: DIE.id, quantity: 2 },
    { partId: BLADE.id, quantity: 4 },
  ];
  const press = (drafts: object[], over = {}) => {
    const sent = { ...entered({ entryId: 'pressed-twice' }), asked, drafts, ...over };
    return draftOrders(db, may('keep-orders'), DraftOrdersInput.parse(sent), ENV);
  };
  const first = must(press([draft('PO-1', DIE.id), draft('PO-2', BLADE.id, 4)]));
  const before = dump(db);
  const renumbered = [
    { ...draft('PO-3', DIE.id), unitPriceMinor: 13_000, why: 'J-9.1', draftedOnDay: '2026-03-03' },
    draft('PO-4', BLADE.id, 4),
  ];
  expect(must(press(renumbered))).toEqual(first);
  expect(must(press([]))).toEqual(first);
  expect(dump(db)).toEqual(before);
  const other = [{ partId: DIE.id, quantity: 3 }, ...asked.slice(1)];
  expect(sentence(press(renumbered, { asked: other }))).toBe(
    'This entry ID was already used for something else.',
  );
  expect(sentence(press([], { entryId: 'pressed-late' }))).toContain('no longer to be ordered');
  expect(dump(db)).toEqual(before);
});

it('a lead approves, nobody else; then it is placed', () => {
  must(draftAll([draft('PO-1', DIE.id)]));
  const ash: Actor = { personId: 'ash', name: 'Ash Moor', role: 'technician' };
  expect(sentence(approve([{ id: 'PO-1', quantity: 3 }], ash))).toContain(
    'A lead approves orders; Ash Moor is none.',
  );
  must(approve([{ id: 'PO-1', quantity: 3 }]));
  expect(listDrafts(db)).toMatchObject([{ id: 'PO-1', status: 'approved', quantity: 3 }]);
  const order = {
    id: 'PO-1',
    partId: DIE.id,
    quantity: 3,
    placedOnDay: '2026-03-02',
    expectedOnDay: '2026-03-30',
  };
  must(placeOrder(db, may('keep-orders'), PlaceOrderInput.parse({ ...entered(), order }), ENV));
  expect(listDrafts(db)).toEqual([]);
  expect(listOpenOrders(db)).toMatchObject([
    { id: 'PO-1', supplier: 'Ninefold Dies', unitPriceMinor: 12_000 },
  ]);
});
