'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { SubmitButton } from '@/app/_shared/ui';
import { addSizesAction } from '../actions';
import type { SizeTile } from './size-tiles';
import { TickSizes } from './tick-sizes';

interface AddSizesFormProps {
  readonly offered: readonly SizeTile[];
  readonly stamp: EntryStamp;
}

/** Takes more of the example sizes into use. */
export function AddSizesForm({ offered, stamp }: AddSizesFormProps) {
  return (
    <EntryForm action={addSizesAction} stamp={stamp} label="Add sizes">
      <TickSizes sizes={offered} />
      <div>
        <SubmitButton>Take into use</SubmitButton>
      </div>
    </EntryForm>
  );
}
