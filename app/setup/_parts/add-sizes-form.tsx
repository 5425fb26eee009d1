'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import { fieldError } from '@/app/_shared/form/form-state';
import { SubmitButton } from '@/app/_shared/ui';
import { addSizesAction } from '../actions';
import type { SizeTile } from './size-tiles';
import { TickSizes } from './tick-sizes';

interface AddSizesFormProps {
  readonly offered: readonly SizeTile[];
  readonly stamp: { entryId: string; deviceAtMs: number };
}

/** Takes more of the example sizes into use. */
export function AddSizesForm({ offered, stamp }: AddSizesFormProps) {
  return (
    <EntryForm action={addSizesAction} stamp={stamp} label="Add sizes">
      {(state) => (
        <>
          <TickSizes sizes={offered} error={fieldError(state, 'connectionIds')} />
          <div>
            <SubmitButton>Take into use</SubmitButton>
          </div>
        </>
      )}
    </EntryForm>
  );
}
