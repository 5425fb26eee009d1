'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import { fieldError, typedOr } from '@/app/_shared/form/form-state';
import { Field, NumberField, Select, SubmitButton } from '@/app/_shared/ui';
import { INTERVAL_METHODS } from '@/lib/shop/gauge-entry';
import { setIntervalAction } from '../actions';

interface IntervalFormProps {
  readonly toolId: string;
  readonly stamp: { entryId: string; deviceAtMs: number };
  readonly days: number | null;
  readonly ends: number | null;
  readonly method: string;
  readonly who: string;
}

/** A person decides the interval: days, ends, or both, by which way, and why. */
export function IntervalForm({ toolId, stamp, days, ends, method, who }: IntervalFormProps) {
  return (
    <EntryForm action={setIntervalAction} stamp={stamp} label="Decide the interval">
      {(state) => (
        <>
          <input type="hidden" name="toolId" value={toolId} />
          <div className="columns">
            <NumberField
              name="intervalDays"
              label="Good for"
              unit="days"
              optional
              defaultValue={typedOr(state, 'intervalDays', days === null ? '' : String(days))}
              error={fieldError(state, 'intervalDays')}
            />
            <NumberField
              name="intervalEnds"
              label="Or for"
              unit="ends"
              optional
              hint="Whichever comes first"
              defaultValue={typedOr(state, 'intervalEnds', ends === null ? '' : String(ends))}
              error={fieldError(state, 'intervalEnds')}
            />
            <Select
              name="method"
              label="Found by"
              options={INTERVAL_METHODS.map(({ code, label }) => ({ value: code, label }))}
              defaultValue={typedOr(state, 'method', method)}
              error={fieldError(state, 'method')}
            />
          </div>
          <Field
            id="interval-reason"
            name="reason"
            label="Why"
            required
            hint={`It stands under the name ${who}.`}
            maxLength={300}
            defaultValue={typedOr(state, 'reason', '')}
            error={fieldError(state, 'reason')}
          />
          <p className="fine">
            A shorter interval takes hold at once. A longer one takes hold at the next calibration; the day on
            the sticker stays.
          </p>
          <div>
            <SubmitButton tone="quiet">Decide it</SubmitButton>
          </div>
        </>
      )}
    </EntryForm>
  );
}
