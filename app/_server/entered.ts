import 'server-only';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import type { z } from 'zod';
import type { FormState } from '@/app/_shared/form/form-state';
import type { Recorded } from '@/db/ledger/ledger';
import type { Action } from '@/lib/access/permit';
import { tidyToolId } from '@/lib/shop/tool-id';
import { act } from './act';
import { stamp, text } from './form-fields';

type Door<A extends Action, S extends z.ZodType> = Parameters<typeof act<A, S, Recorded>>[0];

/** Runs a command about the tool that the form names, and says what was done, with an Undo. */
export async function entered<A extends Action, S extends z.ZodType>(
  door: Door<A, S>,
  raw: object,
  form: FormData,
  sentence: string,
): Promise<FormState> {
  const about = { ...stamp(form), toolId: text(form, 'toolId'), reason: text(form, 'reason') };
  const done = await act(door, { ...about, ...raw }, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  if (done.value.alreadyRecorded)
    return { status: 'done', sentence: 'Already recorded; nothing was counted twice.' };
  return { status: 'done', sentence, undoEntryId: done.value.id };
}

/**
 * The same where the form may be gone afterwards: the tool's page in this folder says what was done. Of an entry that was there
 * already it says nothing, or the form stays and says so.
 */
export function backTo(folder: '/tools' | '/gauges' | '/fluid', repeat: 'unsaid' | 'said' = 'unsaid') {
  return async <A extends Action, S extends z.ZodType>(
    door: Door<A, S>,
    raw: object,
    form: FormData,
  ): Promise<FormState> => {
    const done = await entered(door, raw, form, '');
    if (done.status !== 'done') return done;
    if (done.undoEntryId === undefined && repeat === 'said') return done;
    const query = done.undoEntryId === undefined ? '' : `?done=${encodeURIComponent(done.undoEntryId)}`;
    redirect(`${folder}/${encodeURIComponent(tidyToolId(text(form, 'toolId')))}${query}`);
  };
}
