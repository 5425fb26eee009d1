'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { Field, SubmitButton } from '@/app/_shared/ui';
import { cleanLineAction } from '../cleaning-action';

interface CleaningFormProps {
  readonly jobId: string;
  readonly lineId: string;
  readonly lineNo: number;
  readonly stamp: EntryStamp;
  readonly today: string;
}

/** Writes the cleaning of a line down: by which procedure, when, with what evidence. */
export function CleaningForm({ jobId, lineId, lineNo, stamp, today }: CleaningFormProps) {
  return (
    <EntryForm action={cleanLineAction} stamp={stamp} label="Cleaning record">
      <input type="hidden" name="jobId" value={jobId} />
      <input type="hidden" name="lineId" value={lineId} />
      <input type="hidden" name="lineNo" value={lineNo} />
      <div className="columns">
        <Field name="procedure" label="Procedure and revision" required maxLength={120} />
        <Field name="onDay" id="cleaned-on" label="Cleaned on" type="date" required defaultValue={today} />
        <Field
          name="evidence"
          label="Evidence"
          hint="Who, how it was checked, where the record is kept"
          required
          maxLength={300}
        />
      </div>
      <div>
        <SubmitButton>Write it down</SubmitButton>
      </div>
    </EntryForm>
  );
}
