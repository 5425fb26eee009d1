'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import { fieldError, typedOr } from '@/app/_shared/form/form-state';
import { Choice, Field, SubmitButton } from '@/app/_shared/ui';
import { accountPiecesAction } from '../actions';

interface PiecesFormProps {
  readonly toolId: string;
  readonly stamp: { entryId: string; deviceAtMs: number; shop?: string };
}

/** Whether every piece of a broken tool was found, and where. */
export function PiecesForm({ toolId, stamp }: PiecesFormProps) {
  return (
    <EntryForm action={accountPiecesAction} stamp={stamp} label={`Pieces of ${toolId}`}>
      {(state) => (
        <>
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
            defaultValue={typedOr(state, 'allFound', '')}
            error={fieldError(state, 'allFound')}
          />
          <Field
            id={`where-${toolId}`}
            name="where"
            label="Where"
            hint="Bore looked through with a light, bench, floor, chips."
            required
            maxLength={200}
            defaultValue={typedOr(state, 'where', '')}
            error={fieldError(state, 'where')}
          />
          <div>
            <SubmitButton>Write it down</SubmitButton>
          </div>
        </>
      )}
    </EntryForm>
  );
}
