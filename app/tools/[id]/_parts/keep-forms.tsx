'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { Field, type Option, Select, SubmitButton } from '@/app/_shared/ui';
import { freeToolAction, reserveToolAction } from '../care-actions';

interface About {
  readonly toolId: string;
  readonly stamp: EntryStamp;
}

/** Keeps the tool for a line through a day. */
export function KeepForm({
  toolId,
  stamp,
  lines,
  lineId,
  untilDay,
}: About & { readonly lines: readonly Option[]; readonly lineId: string; readonly untilDay: string }) {
  return (
    <EntryForm action={reserveToolAction} stamp={stamp} label="Keep for a job">
      <input type="hidden" name="toolId" value={toolId} />
      <Select
        id="keep-line"
        name="jobLineId"
        label="For job"
        required
        options={lines}
        defaultValue={lineId}
      />
      <Field id="keep-until" name="untilDay" label="Through" type="date" required defaultValue={untilDay} />
      <div>
        <SubmitButton tone="quiet">Keep it</SubmitButton>
      </div>
    </EntryForm>
  );
}

/** Ends the keeping, in one press. */
export function FreeForm({ toolId, stamp }: About) {
  return (
    <EntryForm action={freeToolAction} stamp={stamp} label="Free it">
      <input type="hidden" name="toolId" value={toolId} />
      <div>
        <SubmitButton tone="quiet">Free it for others</SubmitButton>
      </div>
    </EntryForm>
  );
}
