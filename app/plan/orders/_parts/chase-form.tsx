'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import { fieldError, typedOr } from '@/app/_shared/form/form-state';
import { Field, SubmitButton } from '@/app/_shared/ui';
import { cancelOrderAction, chaseOrderAction } from '../actions';

interface OrderFormProps {
  readonly orderId: string;
  readonly stamp: { entryId: string; deviceAtMs: number };
}

/** The supplier was asked: the day they confirm, or nothing where they did not answer. */
export function ChaseForm({ orderId, stamp }: OrderFormProps) {
  return (
    <EntryForm
      action={chaseOrderAction}
      stamp={stamp}
      label={`Ask after order ${orderId}`}
      className="stack-tight"
    >
      {(state) => (
        <>
          <input type="hidden" name="orderId" value={orderId} />
          <Field
            id={`chase-day-${orderId}`}
            name="confirmedForDay"
            label="Confirmed for"
            hint="Leave empty where nobody answered"
            type="date"
            optional
            defaultValue={typedOr(state, 'confirmedForDay', '')}
            error={fieldError(state, 'expectedOnDay')}
          />
          <Field
            id={`chase-why-${orderId}`}
            name="reason"
            label="What they said"
            optional
            maxLength={300}
            defaultValue={typedOr(state, 'reason', '')}
          />
          <div>
            <SubmitButton tone="quiet">Write it down</SubmitButton>
          </div>
        </>
      )}
    </EntryForm>
  );
}

/** It will not come, or not the rest of it. */
export function CancelForm({ orderId, stamp, words }: OrderFormProps & { readonly words: string }) {
  return (
    <EntryForm
      action={cancelOrderAction}
      stamp={stamp}
      label={`Cancel order ${orderId}`}
      className="stack-tight"
    >
      {(state) => (
        <>
          <input type="hidden" name="orderId" value={orderId} />
          <Field
            id={`cancel-why-${orderId}`}
            name="reason"
            label="Why"
            required
            maxLength={300}
            defaultValue={typedOr(state, 'reason', '')}
          />
          <div>
            <SubmitButton tone="quiet">{words}</SubmitButton>
          </div>
        </>
      )}
    </EntryForm>
  );
}
