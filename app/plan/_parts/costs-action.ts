'use server';

import { revalidatePath } from 'next/cache';
import { act } from '@/app/_server/act';
import { stamp } from '@/app/_server/form-fields';
import type { FormState } from '@/app/_shared/form/form-state';
import { setNoun } from '@/db/commands/set-noun';
import { type SetCosts, SetCostsInput } from '@/lib/shop/costs-input';
import { costsOfForm } from './costs-of-form';

/** Sets what things cost the shop. */
export async function setCostsAction(_state: FormState, form: FormData): Promise<FormState> {
  const command = (
    db: Parameters<typeof setNoun>[0],
    permit: Parameters<typeof setNoun>[1],
    { entryId: id, deviceAtMs, costs }: SetCosts,
    env: Parameters<typeof setNoun>[3],
  ) => setNoun(db, permit, { envelope: { id, deviceAtMs, reason: '' }, noun: 'costs', value: costs }, env);
  const raw = { ...stamp(form), costs: costsOfForm(form) };
  const done = await act({ action: 'set-up-shop', schema: SetCostsInput, command }, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  return { status: 'done', sentence: 'Saved. Everything in money now counts with these.' };
}
