import { expect, it } from 'vitest';
import type { PayloadOf } from '@/lib/ledger/event';
import { evolveOrder, type OrderRecord } from '@/lib/ledger/order-history';
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

const draft: PayloadOf<'order-drafted'> = {
  ...{ id: 'PO-1', partId: 'die-56', quantity: 2, draftedOnDay: '2026-02-01', supplier: 'Ninefold Dies' },
  ...{ unitPriceMinor: 12_000, leadTimeDays: 28, why: 'J-1.1' },
  shown: { stockOutProbability: 0.7, orderByOnDay: '2026-02-10' },
};
const placing = {
  id: 'PO-1',
  partId: 'die-56',
  quantity: 3,
  placedOnDay: '2026-02-03',
  expectedOnDay: '2026-03-03',
};
const step = (order: OrderRecord | undefined, ...args: Parameters<typeof entry>) =>
  evolveOrder(order, entry(...args));
const drafted = must(step(undefined, 'order-drafted', 'PO-1', draft));
const approved = must(step(drafted, 'order-approved', 'PO-1', { quantity: 3 }));
const fromDraft = must(step(approved, 'order-placed', 'PO-1', placing));

it('goes from the draft over the lead’s yes to the order, and keeps what was shown', () => {
  expect([drafted.status, approved.status, fromDraft.status]).toEqual(['drafted', 'approved', 'placed']);
  expect(approved.quantity).toBe(3);
  expect(fromDraft).toMatchObject({
    ...{
      supplier: 'Ninefold Dies',
      unitPriceMinor: 12_000,
      promisedOnDay: '2026-03-03',
      statedOnDay: '2026-02-03',
    },
    ...{ why: 'J-1.1', shown: draft.shown },
  });
});

it('refuses to skip the lead’s yes, or to do to a draft what is done to an order', () => {
  expect([
    sentence(step(drafted, 'order-placed', 'PO-1', placing)),
    sentence(step(drafted, 'order-slipped', 'PO-1', { expectedOnDay: '2026-04-01' })),
    sentence(step(drafted, 'order-received', 'PO-1', { quantity: 1 })),
    sentence(step(drafted, 'order-chased', 'PO-1', { onDay: '2026-02-05', confirmedForDay: null })),
    sentence(step(approved, 'order-placed', 'PO-1', { ...placing, partId: 'blade-56' })),
    sentence(step(fromDraft, 'order-approved', 'PO-1', { quantity: 2 })),
    sentence(step(drafted, 'order-drafted', 'PO-1', draft)),
  ]).toEqual([
    'Draft PO-1 waits for a lead’s yes.',
    'Order PO-1 has not been placed yet.',
    'Order PO-1 has not been placed yet.',
    'Order PO-1 has not been placed yet.',
    'Draft PO-1 is for another part.',
    'Order PO-1 has already been placed.',
    'Order PO-1 is already in the record.',
  ]);
});

it('Q3: a slip or a confirmed day keeps the first promise for the supplier’s statistics', () => {
  const slipped = must(
    step(fromDraft, 'order-slipped', 'PO-1', { expectedOnDay: '2026-03-24', onDay: '2026-02-20' }),
  );
  expect(slipped).toMatchObject({
    promisedOnDay: '2026-03-03',
    expectedOnDay: '2026-03-24',
    statedOnDay: '2026-02-20',
  });
  const chased = must(
    step(slipped, 'order-chased', 'PO-1', { onDay: '2026-03-01', confirmedForDay: '2026-03-26' }),
  );
  expect(chased).toMatchObject({
    promisedOnDay: '2026-03-03',
    expectedOnDay: '2026-03-26',
    statedOnDay: '2026-03-01',
  });
  const silent = must(step(chased, 'order-chased', 'PO-1', { onDay: '2026-03-20', confirmedForDay: null }));
  expect(silent).toMatchObject({
    expectedOnDay: '2026-03-26',
    statedOnDay: '2026-03-01',
    chasedOnDay: '2026-03-20',
  });
});

it('is received in part, then in full; cancelled, nothing more comes', () => {
  const part = must(step(fromDraft, 'order-received', 'PO-1', { quantity: 1, onDay: '2026-03-05' }));
  expect(part).toMatchObject({ status: 'placed', firstReceivedOnDay: '2026-03-05', receivedOnDay: null });
  const full = must(step(part, 'order-received', 'PO-1', { quantity: 2, onDay: '2026-03-09' }));
  expect(full).toMatchObject({
    status: 'received',
    firstReceivedOnDay: '2026-03-05',
    receivedOnDay: '2026-03-09',
  });
  const off = must(step(part, 'order-cancelled', 'PO-1', { onDay: '2026-03-06' }));
  expect(off.status).toBe('cancelled');
  expect(sentence(step(off, 'order-received', 'PO-1', { quantity: 1 }))).toBe(
    'Order PO-1 has been cancelled.',
  );
});
