'use server';

import type { Route } from 'next';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { act } from '@/app/_server/act';
import { today } from '@/app/_server/clock';
import { number, stamp, text, textOrNull } from '@/app/_server/form-fields';
import { shopOutlook } from '@/app/_server/outlook';
import type { FormState } from '@/app/_shared/form/form-state';
import { count, inDays } from '@/app/_shared/format';
import { shopDb } from '@/db/client';
import { cancelOrder, chaseOrder } from '@/db/commands/chase-order';
import { approveOrders, draftOrders } from '@/db/commands/draft-orders';
import { placeOrder, slipOrder } from '@/db/commands/keep-orders';
import { listOrderIds } from '@/db/queries/orders';
import { PlaceOrderInput, SlipOrderInput } from '@/lib/shop/command-input';
import {
  ApproveOrdersInput,
  CancelOrderInput,
  ChaseOrderInput,
  DraftOrdersInput,
} from '@/lib/shop/order-input';
import { draftsOfForm, pickedIds } from './_parts/drafts-of-form';

/** Writes down an order that was placed. */
export async function placeOrderAction(_state: FormState, form: FormData): Promise<FormState> {
  const price = number(form, 'price');
  const order = {
    id: text(form, 'id'),
    partId: text(form, 'partId'),
    quantity: number(form, 'quantity'),
    placedOnDay: text(form, 'placedOnDay'),
    expectedOnDay: text(form, 'expectedOnDay'),
    ...(form.has('supplier') ? { supplier: text(form, 'supplier') } : {}),
    ...(price === undefined ? {} : { unitPriceMinor: Math.round(price * 100) }),
  };
  const raw = { ...stamp(form), reason: text(form, 'reason'), order };
  const done = await act({ action: 'keep-orders', schema: PlaceOrderInput, command: placeOrder }, raw, form);
  if (!done.ok) {
    if (done.state.status !== 'refused') return done.state;
    return { ...done.state, field: done.state.field?.replace(/^order\./, '') ?? null };
  }
  revalidatePath('/', 'layout');
  redirect(`/plan/orders?${new URLSearchParams({ placed: order.id, entry: done.value.id })}` as Route);
}

/** Writes down the new day of an order. The promised day is kept. */
export async function slipOrderAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = {
    ...stamp(form),
    reason: text(form, 'reason'),
    orderId: text(form, 'orderId'),
    expectedOnDay: text(form, 'expectedOnDay'),
  };
  const done = await act({ action: 'keep-orders', schema: SlipOrderInput, command: slipOrder }, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  return {
    status: 'done',
    sentence: `Order ${raw.orderId} is now expected ${inDays(raw.expectedOnDay, today())}.`,
    undoEntryId: done.value.id,
  };
}

/** Drafts what was ticked, each with what it is for and what was shown of it. */
export async function draftOrdersAction(_state: FormState, form: FormData): Promise<FormState> {
  const outlook = await shopOutlook();
  const raw = { ...stamp(form), ...draftsOfForm(form, outlook, listOrderIds(shopDb())) };
  const done = await act(
    { action: 'keep-orders', schema: DraftOrdersInput, command: draftOrders },
    raw,
    form,
  );
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  return {
    status: 'done',
    sentence: `${count(done.value.count, 'order')} drafted. A lead approves them below.`,
  };
}

/** A lead's yes to the drafts that were ticked. */
export async function approveOrdersAction(_state: FormState, form: FormData): Promise<FormState> {
  const orders = pickedIds(form).map((id) => ({ id, quantity: number(form, `quantity:${id}`) }));
  const raw = { ...stamp(form), orders };
  const door = { action: 'approve-orders', schema: ApproveOrdersInput, command: approveOrders } as const;
  const done = await act(door, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  return {
    status: 'done',
    sentence: `${count(done.value.count, 'order')} approved. Print or send them, then place them.`,
  };
}

/** Writes down that a supplier was asked. */
export async function chaseOrderAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = {
    ...stamp(form),
    reason: text(form, 'reason'),
    orderId: text(form, 'orderId'),
    confirmedForDay: textOrNull(form, 'confirmedForDay'),
  };
  const done = await act({ action: 'keep-orders', schema: ChaseOrderInput, command: chaseOrder }, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  const sentence =
    raw.confirmedForDay === null
      ? `Order ${raw.orderId}: asked, no answer yet.`
      : `Order ${raw.orderId} is confirmed for ${inDays(raw.confirmedForDay, today())}.`;
  return { status: 'done', sentence, undoEntryId: done.value.id };
}

/** Writes down that an order or a draft is off. */
export async function cancelOrderAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = {
    ...stamp(form),
    reason: text(form, 'reason'),
    orderId: text(form, 'orderId'),
  };
  const done = await act(
    { action: 'keep-orders', schema: CancelOrderInput, command: cancelOrder },
    raw,
    form,
  );
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  return { status: 'done', sentence: `${raw.orderId} is cancelled.`, undoEntryId: done.value.id };
}
