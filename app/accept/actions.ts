'use server';

import { revalidatePath } from 'next/cache';
import { act } from '@/app/_server/act';
import { today } from '@/app/_server/clock';
import { stamp, text } from '@/app/_server/form-fields';
import type { FormState } from '@/app/_shared/form/form-state';
import { count } from '@/app/_shared/format';
import { shopDb } from '@/db/client';
import { acceptEnds } from '@/db/commands/accept-ends';
import { findAcceptance } from '@/db/queries/acceptance';
import { AcceptEndsInput } from '@/lib/shop/acceptance-input';
import { REJECT_CAUSES, ROLE_LABEL } from '@/lib/shop/vocabulary';
import { lookOfForm } from './_parts/look-of-form';

/** Records a look at ends; what came of it is decided by the rule and the gauges, and said in one sentence. */
export async function acceptEndsAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = { ...stamp(form), ...lookOfForm(form), reason: text(form, 'reason'), gaugedOnDay: today() };
  const done = await act({ action: 'accept-ends', schema: AcceptEndsInput, command: acceptEnds }, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  if (done.value.alreadyRecorded)
    return { status: 'done', sentence: 'Already recorded; nothing was counted twice.' };
  return { status: 'done', sentence: outcome(done.value.id), undoEntryId: done.value.id };
}

function outcome(id: string): string {
  const look = findAcceptance(shopDb(), id);
  if (look === undefined) return 'Recorded.';
  const ends = count(look.endCount, 'end');
  if (look.decision === 'refused') {
    const label = REJECT_CAUSES.find(({ code }) => code === look.cause)?.label ?? look.cause;
    return `${ends} refused: ${label}.`;
  }
  if (look.gaugesMissing.length === 0) return `${ends} accepted.`;
  const missing = look.gaugesMissing.map((role) => ROLE_LABEL[role]).join(', ');
  return `${ends} accepted, not releasable: no ${missing} recorded.`;
}
