'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { Choice, Field, SubmitButton } from '@/app/_shared/ui';
import { closeJobAction } from '../actions';

interface CloseJobFormProps {
  readonly jobId: string;
  readonly stamp: EntryStamp;
}

/** Takes a job off the plan. What it held is free for the lines after it; wear already logged stays. */
export function CloseJobForm({ jobId, stamp }: CloseJobFormProps) {
  return (
    <EntryForm action={closeJobAction} stamp={stamp} label="Close the job">
      <input type="hidden" name="jobId" value={jobId} />
      <Choice
        name="how"
        legend="It is"
        required
        options={[
          { value: 'done', label: 'done', note: 'all ends made and handed over' },
          {
            value: 'cancelled',
            label: 'cancelled',
            note: 'frees what it held; wear already logged stays',
          },
        ]}
      />
      <Field id="close-reason" name="reason" label="Why" hint="Needed when it is cancelled" maxLength={300} />
      <div>
        <SubmitButton tone="quiet">Close it</SubmitButton>
      </div>
    </EntryForm>
  );
}
