'use server';

import { setFromForm } from '@/app/_server/set-from-form';
import type { FormState } from '@/app/_shared/form/form-state';
import { SetGaugeSettingsInput } from '@/lib/shop/gauge-settings';
import { gaugeSettingsOf } from './form-readers';

/** Sets by which rule gauges are judged, and how sure an interval shall be. */
export async function setGaugeSettingsAction(_state: FormState, form: FormData): Promise<FormState> {
  return setFromForm(
    {
      schema: SetGaugeSettingsInput,
      nounOf: ({ settings: value }) => ({ noun: 'gauge-settings', value }),
      reasonOf: ({ settings }) => settings.why,
      sentence: 'Saved. What was judged before keeps its rule.',
    },
    { settings: gaugeSettingsOf(form) },
    form,
  );
}
