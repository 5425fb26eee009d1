'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import { fieldError, typedOr } from '@/app/_shared/form/form-state';
import { Choice, Field, SubmitButton } from '@/app/_shared/ui';
import { closeJobAction } from '../actions';

interface CloseJobFormProps {
  readonly jobId: string;
  readonly stamp: { entryId: string; deviceAtMs: number };
}

/** Takes a job off the plan. What it held is free for the lines after it; wear already logged stays. */
export function CloseJobForm({ jobId, stamp }: CloseJobFormProps) {
  return (
    <EntryForm action={closeJobAction} stamp={stamp} label="Close the job">
      {(state) => (
        <>
          <input type="hidden" name="jobId" value={jobId} />
          <Choice
            name="how"
            legend="It is"
            required
            defaultValue={typedOr(state, 'how', '')}
            options={[
              { value: 'done', label: 'done', note: 'all ends made and handed over' },
              {
                value: 'cancelled',
                label: 'cancelled',
                note: 'frees what it held; wear already logged stays',
              },
            ]}
          />
          <Field
            id="close-reason"
            name="reason"
            label="Why"
            hint="Needed when it is cancelled"
            maxLength={300}
            defaultValue={typedOr(state, 'reason', '')}
            error={fieldError(state, 'reason')}
          />
          <div>
            <SubmitButton tone="quiet">Close it</SubmitButton>
          </div>
        </>
      )}
    </EntryForm>
  );
}
