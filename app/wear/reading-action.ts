'use server';

import { setFromForm } from '@/app/_server/set-from-form';
import type { FormState } from '@/app/_shared/form/form-state';
import { SetReadingSettingsInput } from '@/lib/shop/reading-settings';
import { readingOfForm } from './reading-of-form';

/** Sets how the shop turns what it sees of an edge into a share of its life. */
export async function setReadingSettingsAction(_state: FormState, form: FormData): Promise<FormState> {
  return setFromForm(
    {
      schema: SetReadingSettingsInput,
      nounOf: ({ settings: value }) => ({ noun: 'reading-settings', value }),
      sentence: 'Saved. Every reading, past ones too, now counts by these.',
    },
    { settings: readingOfForm(form) },
    form,
  );
}
