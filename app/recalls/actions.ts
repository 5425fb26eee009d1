'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { act } from '@/app/_server/act';
import { today } from '@/app/_server/clock';
import { stamp, text, textOrNull } from '@/app/_server/form-fields';
import type { FormState } from '@/app/_shared/form/form-state';
import { count } from '@/app/_shared/format';
import { disposeSuspects } from '@/db/commands/dispose-suspect';
import { closeRecall, reviewRecall } from '@/db/commands/keep-recall';
import { openRecall } from '@/db/commands/open-recall';
import {
  CloseRecallInput,
  DisposeSuspectsInput,
  OpenRecallInput,
  ReviewRecallInput,
} from '@/lib/shop/acceptance-input';
import { itemsOfForm } from './_parts/items-of-form';

/** Sets the gauge aside and lists its ends, in one. */
export async function openRecallAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = {
    ...stamp(form),
    gaugeId: text(form, 'gaugeId'),
    direction: text(form, 'direction'),
    found: text(form, 'found'),
    foundEntryId: textOrNull(form, 'foundEntryId'),
    foundOnDay: textOrNull(form, 'foundOnDay') ?? today(),
    masterRecallId: textOrNull(form, 'masterRecallId'),
  };
  const door = { action: 'keep-recalls', schema: OpenRecallInput, command: openRecall } as const;
  const done = await act(door, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  redirect(`/recalls/${encodeURIComponent(done.value.recallId)}`);
}

/** Decides about the ends that are ticked. */
export async function disposeSuspectsAction(_state: FormState, form: FormData): Promise<FormState> {
  const items = itemsOfForm(form);
  const raw = {
    ...stamp(form),
    recallId: text(form, 'recallId'),
    items,
    how: text(form, 'how'),
    gaugeId: textOrNull(form, 'gaugeId'),
    evidence: text(form, 'evidence'),
    onDay: today(),
  };
  const door = { action: 'keep-recalls', schema: DisposeSuspectsInput, command: disposeSuspects } as const;
  const done = await act(door, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  const ends = items.reduce((sum, { endCount }) => sum + (endCount ?? 0), 0);
  // Several looks make several entries: each is taken back from the log.
  const undo = items.length === 1 ? { undoEntryId: done.value.id } : {};
  return { status: 'done', sentence: `Decided about ${count(ends, 'end')}.`, ...undo };
}

/** Works its window out again from what stands now. */
export async function reviewRecallAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = { ...stamp(form), recallId: text(form, 'recallId') };
  const door = { action: 'keep-recalls', schema: ReviewRecallInput, command: reviewRecall } as const;
  const done = await act(door, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  return { status: 'done', sentence: 'More ends fall in its window now; they are listed.' };
}

export async function closeRecallAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = {
    ...stamp(form),
    recallId: text(form, 'recallId'),
    conclusion: text(form, 'conclusion'),
  };
  const door = { action: 'keep-recalls', schema: CloseRecallInput, command: closeRecall } as const;
  const done = await act(door, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  return { status: 'done', sentence: 'Closed. New evidence opens it again.', undoEntryId: done.value.id };
}
