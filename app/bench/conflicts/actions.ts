'use server';

import { revalidatePath } from 'next/cache';
import { act } from '@/app/_server/act';
import { stamp, text } from '@/app/_server/form-fields';
import type { FormState } from '@/app/_shared/form/form-state';
import { settleConflict } from '@/db/commands/keep-conflicts';
import { SettleConflictInput } from '@/lib/shop/kit-input';

export async function settleConflictAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = {
    ...stamp(form),
    ...{ conflictId: text(form, 'conflictId'), how: text(form, 'how'), note: text(form, 'note'), reason: '' },
  };
  const door = { action: 'settle-conflict', schema: SettleConflictInput, command: settleConflict } as const;
  const done = await act(door, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  return { status: 'done', sentence: 'Settled.' };
}
