'use server';

import { revalidatePath } from 'next/cache';
import type { z } from 'zod';
import { act } from '@/app/_server/act';
import { stamp } from '@/app/_server/form-fields';
import type { FormState } from '@/app/_shared/form/form-state';
import { setNouns } from '@/db/commands/set-noun';
import { SetBeliefInput } from '@/lib/shop/set-up-input';
import { beliefOfForm } from './belief-of-form';

/** Sets what the shop believes of one kind of edge before the log speaks. */
export async function setBeliefAction(_state: FormState, form: FormData): Promise<FormState> {
  const command = (
    db: Parameters<typeof setNouns>[0],
    permit: Parameters<typeof setNouns>[1],
    { entryId: id, deviceAtMs, belief }: z.output<typeof SetBeliefInput>,
    env: Parameters<typeof setNouns>[3],
  ) =>
    setNouns(
      db,
      permit,
      { envelope: { id, deviceAtMs, reason: '' }, nouns: [{ noun: 'belief', value: belief }] },
      env,
    );
  const raw = { ...stamp(form), belief: beliefOfForm(form) };
  const done = await act({ action: 'set-up-shop', schema: SetBeliefInput, command }, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  return { status: 'done', sentence: 'Saved. Every estimate now starts from these.' };
}
