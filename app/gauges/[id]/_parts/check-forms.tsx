'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { Choice, Field, type Option, Select, SubmitButton } from '@/app/_shared/ui';
import { checkGaugeAction, dropGaugeAction } from '../actions';

interface About {
  readonly toolId: string;
  readonly stamp: EntryStamp;
  readonly today: string;
}

/** One tap, nothing asked: the gauge is set aside. */
export function DropForm({ toolId, stamp, today }: About) {
  return (
    <EntryForm action={dropGaugeAction} stamp={stamp} label="Set aside after a knock">
      <input type="hidden" name="toolId" value={toolId} />
      <input type="hidden" name="onDay" value={today} />
      <p>
        A ring that was dropped may have changed its setting and look perfect. Setting it aside costs five
        minutes on the plug.
      </p>
      <div>
        <SubmitButton tone="quiet" pendingText="Setting aside…">
          It was dropped or knocked
        </SubmitButton>
      </div>
    </EntryForm>
  );
}

/** A check in the shop: on what, and what came of it. */
export function CheckForm({
  toolId,
  stamp,
  today,
  masters,
  setAside,
}: About & { readonly masters: readonly Option[]; readonly setAside: boolean }) {
  return (
    <EntryForm action={checkGaugeAction} stamp={stamp} label="Check in the shop">
      <input type="hidden" name="toolId" value={toolId} />
      <Choice
        name="result"
        legend="The check"
        required
        options={[
          {
            value: 'pass',
            label: 'passed',
            note: setAside ? 'back in the crib, with the record' : 'kept as evidence',
          },
          { value: 'fail', label: 'did not pass', note: 'set aside; ends to be reviewed' },
        ]}
      />
      <Select
        name="againstToolId"
        label="Checked on"
        placeholder="No marked master: does not count as evidence"
        options={masters}
        defaultValue={masters[0]?.value ?? ''}
      />
      <div className="columns">
        <Field id="check-day" name="onDay" label="On" type="date" required max={today} defaultValue={today} />
        <Field id="check-reason" name="reason" label="What was seen" optional maxLength={300} />
      </div>
      <div>
        <SubmitButton tone={setAside ? 'primary' : 'quiet'}>Write it down</SubmitButton>
      </div>
    </EntryForm>
  );
}
