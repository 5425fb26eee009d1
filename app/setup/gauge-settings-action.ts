'use server';

import { revalidatePath } from 'next/cache';
import { act } from '@/app/_server/act';
import { stamp } from '@/app/_server/form-fields';
import type { FormState } from '@/app/_shared/form/form-state';
import { setNoun } from '@/db/commands/set-noun';
import { type SetGaugeSettings, SetGaugeSettingsInput } from '@/lib/shop/gauge-settings';
import { gaugeSettingsOf } from './form-readers';

/** Sets by which rule gauges are judged, and how sure an interval shall be. */
export async function setGaugeSettingsAction(_state: FormState, form: FormData): Promise<FormState> {
  const command = (
    db: Parameters<typeof setNoun>[0],
    permit: Parameters<typeof setNoun>[1],
    { entryId: id, deviceAtMs, settings: value }: SetGaugeSettings,
    env: Parameters<typeof setNoun>[3],
  ) =>
    setNoun(
      db,
      permit,
      { envelope: { id, deviceAtMs, reason: value.why }, noun: 'gauge-settings', value },
      env,
    );
  const raw = { ...stamp(form), settings: gaugeSettingsOf(form) };
  const done = await act({ action: 'set-up-shop', schema: SetGaugeSettingsInput, command }, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  return { status: 'done', sentence: 'Saved. What was judged before keeps its rule.' };
}
