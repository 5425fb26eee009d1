'use server';

import { setFromForm } from '@/app/_server/set-from-form';
import type { FormState } from '@/app/_shared/form/form-state';
import { SetCostsInput } from '@/lib/shop/costs-input';
import { costsOfForm } from './costs-of-form';

/** Sets what things cost the shop. */
export async function setCostsAction(_state: FormState, form: FormData): Promise<FormState> {
  return setFromForm(
    {
      schema: SetCostsInput,
      nounOf: ({ costs: value }) => ({ noun: 'costs', value }),
      sentence: 'Saved. Everything in money now counts with these.',
    },
    { costs: costsOfForm(form) },
    form,
  );
}
