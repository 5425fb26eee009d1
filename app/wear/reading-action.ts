'use server';

import { revalidatePath } from 'next/cache';
import { act } from '@/app/_server/act';
import { stamp } from '@/app/_server/form-fields';
import type { FormState } from '@/app/_shared/form/form-state';
import { setNoun } from '@/db/commands/set-noun';
import { type SetReadingSettings, SetReadingSettingsInput } from '@/lib/shop/reading-settings';
import { readingOfForm } from './reading-of-form';

/** Sets how the shop turns what it sees of an edge into a share of its life. */
export async function setReadingSettingsAction(_state: FormState, form: FormData): Promise<FormState> {
  const command = (
    db: Parameters<typeof setNoun>[0],
    permit: Parameters<typeof setNoun>[1],
    { entryId: id, deviceAtMs, settings: value }: SetReadingSettings,
    env: Parameters<typeof setNoun>[3],
  ) =>
    setNoun(db, permit, { envelope: { id, deviceAtMs, reason: '' }, noun: 'reading-settings', value }, env);
  const raw = { ...stamp(form), settings: readingOfForm(form) };
  const done = await act({ action: 'set-up-shop', schema: SetReadingSettingsInput, command }, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  return { status: 'done', sentence: 'Saved. Every reading, past ones too, now counts by these.' };
}
