import 'server-only';
import { revalidatePath } from 'next/cache';
import type { z } from 'zod';
import type { FormState } from '@/app/_shared/form/form-state';
import { type Noun, setNoun } from '@/db/commands/set-noun';
import type { Env } from '@/db/ledger/ledger';
import type { Db } from '@/db/open';
import type { Permit } from '@/lib/access/permit';
import { act } from './act';
import { stamp } from './form-fields';

interface Setting<S extends z.ZodType> {
  readonly schema: S;
  readonly nounOf: (input: z.output<S>) => Noun;
  /** Why, for the history; nothing where the form does not ask. */
  readonly reasonOf?: (input: z.output<S>) => string;
  /** What the form says when it is done. */
  readonly sentence: string;
}

/** Sets one of the shop's settings to what a form says, `said` being read from its fields, and answers for the form. */
export async function setFromForm<S extends z.ZodType<{ entryId: string; deviceAtMs: number }>>(
  { schema, nounOf, reasonOf, sentence }: Setting<S>,
  said: object,
  form: FormData,
): Promise<FormState> {
  const command = (db: Db, permit: Permit<'set-up-shop'>, input: z.output<S>, env: Env) => {
    const { entryId: id, deviceAtMs } = input;
    const envelope = { id, deviceAtMs, reason: reasonOf?.(input) ?? '' };
    return setNoun(db, permit, { ...nounOf(input), envelope }, env);
  };
  const done = await act({ action: 'set-up-shop', schema, command }, { ...stamp(form), ...said }, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  return { status: 'done', sentence };
}
