'use server';

import { revalidatePath } from 'next/cache';
import { act } from '@/app/_server/act';
import { number, stamp, text } from '@/app/_server/form-fields';
import type { FormState } from '@/app/_shared/form/form-state';
import { cleanLine } from '@/db/commands/clean-line';
import { CleanLineInput } from '@/lib/shop/fluid-input';

/** Writes down the cleaning of a line; its hold ends with it. */
export async function cleanLineAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = {
    ...stamp(form),
    reason: '',
    jobId: text(form, 'jobId'),
    lineNo: number(form, 'lineNo'),
    procedure: text(form, 'procedure'),
    onDay: text(form, 'onDay'),
    evidence: text(form, 'evidence'),
  };
  const done = await act({ action: 'plan-job', schema: CleanLineInput, command: cleanLine }, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  return done.value.alreadyRecorded
    ? { status: 'done', sentence: 'Already recorded; nothing was written twice.' }
    : { status: 'done', sentence: 'The cleaning is written down.', undoEntryId: done.value.id };
}
