'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import { fieldError, typedOr } from '@/app/_shared/form/form-state';
import { Field, SubmitButton } from '@/app/_shared/ui';
import { slipOrderAction } from '../actions';

interface SlipFormProps {
  readonly orderId: string;
  readonly expectedOnDay: string;
  readonly stamp: { entryId: string; deviceAtMs: number };
}

/** The new day of an order that comes later, or sooner, than expected. */
export function SlipForm({ orderId, expectedOnDay, stamp }: SlipFormProps) {
  return (
    <EntryForm
      action={slipOrderAction}
      stamp={stamp}
      label={`New day of order ${orderId}`}
      className="stack-tight"
    >
      {(state) => (
        <>
          <input type="hidden" name="orderId" value={orderId} />
          <Field
            id={`day-${orderId}`}
            name="expectedOnDay"
            label="Now expected"
            type="date"
            required
            defaultValue={typedOr(state, 'expectedOnDay', expectedOnDay)}
            error={fieldError(state, 'expectedOnDay')}
          />
          <Field
            id={`slip-why-${orderId}`}
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
