'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { Choice, Field, SubmitButton } from '@/app/_shared/ui';
import { accountPiecesAction } from '../actions';

interface PiecesFormProps {
  readonly toolId: string;
  readonly stamp: EntryStamp;
}

/** Whether every piece of a broken tool was found, and where. */
export function PiecesForm({ toolId, stamp }: PiecesFormProps) {
  return (
    <EntryForm action={accountPiecesAction} stamp={stamp} label={`Pieces of ${toolId}`}>
      <input type="hidden" name="toolId" value={toolId} />
      <Choice
        id={`pieces-${toolId}`}
        name="allFound"
        legend={`Pieces of ${toolId}`}
        required
        options={[
          { value: 'yes', label: 'All found' },
          { value: 'no', label: 'Not all', note: 'only a lead or quality ends the search' },
        ]}
      />
      <Field
        id={`where-${toolId}`}
        name="where"
        label="Where"
        hint="Bore looked through with a light, bench, floor, chips."
        required
        maxLength={200}
      />
      <div>
        <SubmitButton>Write it down</SubmitButton>
      </div>
    </EntryForm>
  );
}
