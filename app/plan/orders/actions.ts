'use server';

import type { Route } from 'next';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { act } from '@/app/_server/act';
import { today } from '@/app/_server/clock';
import { number, stamp, text } from '@/app/_server/form-fields';
import type { FormState } from '@/app/_shared/form/form-state';
import { inDays } from '@/app/_shared/format';
import { placeOrder, slipOrder } from '@/db/commands/keep-orders';
import { PlaceOrderInput, SlipOrderInput } from '@/lib/shop/command-input';

/** Writes down an order that was placed. */
export async function placeOrderAction(_state: FormState, form: FormData): Promise<FormState> {
  const order = {
    id: text(form, 'id'),
    partId: text(form, 'partId'),
    quantity: number(form, 'quantity'),
    placedOnDay: text(form, 'placedOnDay'),
    expectedOnDay: text(form, 'expectedOnDay'),
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
