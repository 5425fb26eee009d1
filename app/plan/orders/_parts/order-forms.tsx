'use client';

import type { ReactNode } from 'react';
import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import type { FormState } from '@/app/_shared/form/form-state';
import { Field, SubmitButton } from '@/app/_shared/ui';
import { cancelOrderAction, chaseOrderAction, slipOrderAction } from '../actions';

interface AboutOrder {
  readonly orderId: string;
  readonly stamp: EntryStamp;
}

/** The supplier was asked: the day they confirm, or nothing where they did not answer. */
export function ChaseForm({ orderId, stamp }: AboutOrder) {
  return (
    <OrderForm {...{ orderId, stamp }} action={chaseOrderAction} label={`Ask after order ${orderId}`}>
      <Field
        id={`chase-day-${orderId}`}
        name="confirmedForDay"
        label="Confirmed for"
        hint="Leave empty where nobody answered"
        type="date"
        optional
        answers="expectedOnDay"
      />
      <Field id={`chase-why-${orderId}`} name="reason" label="What they said" optional maxLength={300} />
    </OrderForm>
  );
}

/** The new day of an order that comes later, or sooner, than expected. */
export function SlipForm({ orderId, stamp, expectedOnDay }: AboutOrder & { readonly expectedOnDay: string }) {
  return (
    <OrderForm {...{ orderId, stamp }} action={slipOrderAction} label={`New day of order ${orderId}`}>
      <Field
        id={`day-${orderId}`}
        name="expectedOnDay"
        label="Now expected"
        type="date"
        required
        defaultValue={expectedOnDay}
      />
      <Field id={`slip-why-${orderId}`} name="reason" label="What they said" optional maxLength={300} />
    </OrderForm>
  );
}

/** It will not come, or not the rest of it. */
export function CancelForm({ orderId, stamp, words }: AboutOrder & { readonly words: string }) {
  return (
    <OrderForm {...{ orderId, stamp, words }} action={cancelOrderAction} label={`Cancel order ${orderId}`}>
      <Field id={`cancel-why-${orderId}`} name="reason" label="Why" required maxLength={300} />
    </OrderForm>
  );
}

interface OrderFormProps extends AboutOrder {
  readonly action: (state: FormState, form: FormData) => Promise<FormState>;
  readonly label: string;
  /** What its button says. */
  readonly words?: string;
  readonly children: ReactNode;
}

function OrderForm({ orderId, stamp, action, label, words = 'Write it down', children }: OrderFormProps) {
  return (
    <EntryForm action={action} stamp={stamp} label={label} className="stack-tight">
      <input type="hidden" name="orderId" value={orderId} />
      {children}
      <div>
        <SubmitButton tone="quiet">{words}</SubmitButton>
      </div>
    </EntryForm>
  );
}
