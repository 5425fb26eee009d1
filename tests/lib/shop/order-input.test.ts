import { expect, it } from 'vitest';
import {
  ApproveOrdersInput,
  CancelOrderInput,
  ChaseOrderInput,
  DraftOrdersInput,
} from '@/lib/shop/order-input';
import { entered } from '../../support/db';

it('says in a sentence what cannot be read', () => {
  const first = (result: { error?: { issues: { message: string }[] } | undefined }) =>
    result.error?.issues[0]?.message;
  expect([
    first(ApproveOrdersInput.safeParse({ ...entered(), orders: [{ id: 'PO-1', quantity: 0 }] })),
    first(
      ChaseOrderInput.safeParse({
        ...entered(),
        orderId: 'PO-1',
        onDay: '2026-03-02',
        confirmedForDay: 'soon',
      }),
    ),
    first(CancelOrderInput.safeParse({ ...entered(), orderId: '', onDay: '2026-03-02' })),
    first(DraftOrdersInput.safeParse({ ...entered(), drafts: Array(51).fill({}) })),
  ]).toEqual([
    'The quantity must be at least 1.',
    'The confirmed day must be a day written as YYYY-MM-DD.',
    'The order must be letters, digits, dashes or dots, at most 64.',
    expect.any(String),
  ]);
});
