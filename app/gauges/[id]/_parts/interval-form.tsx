'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { Field, NumberField, Select, SubmitButton } from '@/app/_shared/ui';
import { INTERVAL_METHODS } from '@/lib/shop/gauge-entry';
import { setIntervalAction } from '../actions';

interface IntervalFormProps {
  readonly toolId: string;
  readonly stamp: EntryStamp;
  readonly days: number | null;
  readonly ends: number | null;
  readonly method: string;
  readonly who: string;
}

/** A person decides the interval: days, ends, or both, by which way, and why. */
export function IntervalForm({ toolId, stamp, days, ends, method, who }: IntervalFormProps) {
  return (
    <EntryForm action={setIntervalAction} stamp={stamp} label="Decide the interval">
      <input type="hidden" name="toolId" value={toolId} />
      <div className="columns">
        <NumberField
          name="intervalDays"
          label="Good for"
          unit="days"
          optional
          defaultValue={days === null ? '' : String(days)}
        />
        <NumberField
          name="intervalEnds"
          label="Or for"
          unit="ends"
          optional
          hint="Whichever comes first"
          defaultValue={ends === null ? '' : String(ends)}
        />
        <Select
          name="method"
          label="Found by"
          options={INTERVAL_METHODS.map(({ code, label }) => ({ value: code, label }))}
          defaultValue={method}
        />
      </div>
      <Field
        id="interval-reason"
        name="reason"
        label="Why"
        required
        hint={`It stands under the name ${who}.`}
        maxLength={300}
      />
      <p className="fine">
        A shorter interval takes hold at once. A longer one takes hold at the next calibration; the day on the
        sticker stays.
      </p>
      <div>
        <SubmitButton tone="quiet">Decide it</SubmitButton>
      </div>
    </EntryForm>
  );
}
