'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import { fieldError, typedOr } from '@/app/_shared/form/form-state';
import { Field, type Option, Select, SubmitButton } from '@/app/_shared/ui';
import { freeToolAction, reserveToolAction } from '../care-actions';

interface About {
  readonly toolId: string;
  readonly stamp: { entryId: string; deviceAtMs: number };
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
      {(state) => (
        <>
          <input type="hidden" name="toolId" value={toolId} />
          <Select
            id="keep-line"
            name="jobLineId"
            label="For job"
            required
            options={lines}
            defaultValue={typedOr(state, 'jobLineId', lineId)}
            error={fieldError(state, 'jobLineId')}
          />
          <Field
            id="keep-until"
            name="untilDay"
            label="Through"
            type="date"
            required
            defaultValue={typedOr(state, 'untilDay', untilDay)}
            error={fieldError(state, 'untilDay')}
          />
          <div>
            <SubmitButton tone="quiet">Keep it</SubmitButton>
          </div>
        </>
      )}
    </EntryForm>
  );
}

/** Ends the keeping, in one press. */
export function FreeForm({ toolId, stamp }: About) {
  return (
    <EntryForm action={freeToolAction} stamp={stamp} label="Free it">
      {() => (
        <>
          <input type="hidden" name="toolId" value={toolId} />
          <div>
            <SubmitButton tone="quiet">Free it for others</SubmitButton>
          </div>
        </>
      )}
    </EntryForm>
  );
}
