'use server';

import { revalidatePath } from 'next/cache';
import { z } from 'zod';
import { act } from '@/app/_server/act';
import { checked, number, numberOrNull, stamp, text } from '@/app/_server/form-fields';
import { mended } from '@/app/_server/mend';
import type { FormState } from '@/app/_shared/form/form-state';
import { setConnection } from '@/db/commands/set-connection';
import { ConnectionInput } from '@/lib/shop/connection-input';

const Input = ConnectionInput.extend({ isNew: z.boolean() });

/** Writes a row of the size table. */
export async function setConnectionAction(_state: FormState, sent: FormData): Promise<FormState> {
  const form = mended(sent);
  const raw = {
    ...stamp(form),
    size: text(form, 'size'),
    service: text(form, 'service'),
    tpi: number(form, 'tpi'),
    hand: text(form, 'hand'),
    threadClass: text(form, 'threadClass'),
    threadLength: text(form, 'threadLength'),
    nose: text(form, 'nose'),
    unit: text(form, 'unit'),
    coneAngleDeg: number(form, 'coneAngleDeg'),
    notGoTurnsMax: numberOrNull(form, 'notGoTurnsMax'),
    confirmed: checked(form, 'confirmed'),
    inUse: checked(form, 'inUse'),
    isNew: text(form, 'isNew') === 'yes',
  };
  const done = await act({ action: 'set-up-shop', schema: Input, command: setConnection }, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  return {
    status: 'done',
    sentence: raw.isNew
      ? 'In the table, with the parts of its set. Count in or receive what you have of it.'
      : 'The row is changed. What was cut before keeps the turns it was logged with.',
  };
}
