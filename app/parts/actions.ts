'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { act, refusedState } from '@/app/_server/act';
import { stamp } from '@/app/_server/form-fields';
import type { FormState } from '@/app/_shared/form/form-state';
import { shopDb } from '@/db/client';
import { setNoun } from '@/db/commands/set-noun';
import { listParts } from '@/db/queries/tables';
import { SetPartInput } from '@/lib/shop/set-up-input';
import { partOfForm } from './_parts/part-of-form';

/** Writes a part: a new one, or what is known of one that the shop has. */
export async function setPartAction(_state: FormState, form: FormData): Promise<FormState> {
  const parts = listParts(shopDb());
  const part = partOfForm(form, parts);
  if (!part.ok) return refusedState(part.refusal, form);
  const done = await act(
    {
      action: 'set-up-shop',
      schema: SetPartInput,
      command: (db, permit, { entryId, deviceAtMs, part: value }, env) =>
        setNoun(db, permit, { noun: 'part', value, envelope: { id: entryId, deviceAtMs, reason: '' } }, env),
    },
    { ...stamp(form), part: part.value },
    form,
  );
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  redirect('/parts');
}
