'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { act } from '@/app/_server/act';
import { checked, number, numberOrNull, stamp, text, textOrNull } from '@/app/_server/form-fields';
import type { FormState } from '@/app/_shared/form/form-state';
import { receiveTool } from '@/db/commands/receive-tool';
import { ReceiveToolInput } from '@/lib/shop/command-input';

/** Receives one tool: its mark, what it is, its hand, what it had cut before. */
export async function receiveAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = {
    ...stamp(form),
    reason: text(form, 'reason'),
    toolId: text(form, 'toolId'),
    partId: text(form, 'partId'),
    hand: textOrNull(form, 'hand'),
    lot: text(form, 'lot'),
    receivedOnDay: text(form, 'receivedOnDay'),
    opening: opening(form),
    dueOnDay: textOrNull(form, 'dueOnDay'),
    expiresOnDay: textOrNull(form, 'expiresOnDay'),
    openedOnDay: textOrNull(form, 'openedOnDay'),
    levelMl: numberOrNull(form, 'levelMl'),
    orderId: textOrNull(form, 'orderId'),
    certificate: textOrNull(form, 'certificate') ?? undefined,
    takeWrongHand: checked(form, 'takeWrongHand') || undefined,
  };
  const done = await act(
    { action: 'receive-tool', schema: ReceiveToolInput, command: receiveTool },
    raw,
    form,
  );
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  const query = new URLSearchParams({ part: raw.partId, done: done.value.id });
  redirect(`/tools/receive?${query}`);
}

function opening(form: FormData) {
  const known = text(form, 'opening') || 'new';
  if (known !== 'counted') return { known };
  return {
    known,
    connectionId: text(form, 'openingConnectionId'),
    materialId: text(form, 'openingMaterialId'),
    ends: number(form, 'openingEnds'),
  };
}
