'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { Choice, Field, SubmitButton } from '@/app/_shared/ui';
import { settleConflictAction } from '../actions';

interface SettleFormProps {
  readonly conflictId: string;
  readonly stamp: EntryStamp;
}

/** What was done about a conflict: entered by hand in another way, or dropped. */
export function SettleForm({ conflictId, stamp }: SettleFormProps) {
  return (
    <EntryForm action={settleConflictAction} stamp={stamp} label="Settle it">
      <input type="hidden" name="conflictId" value={conflictId} />
      <Choice
        id={`how-${conflictId}`}
        name="how"
        legend="What was done"
        required
        options={[
          {
            value: 'entered',
            label: 'Entered by hand',
            note: 'on the right tool, or in the right order',
          },
          { value: 'dropped', label: 'Dropped', note: 'it was counted elsewhere, or never happened' },
        ]}
      />
      <Field id={`note-${conflictId}`} name="note" label="In a few words" required maxLength={300} />
      <div>
        <SubmitButton>Settle it</SubmitButton>
      </div>
    </EntryForm>
  );
}
