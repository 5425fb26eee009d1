import 'server-only';
import type { z } from 'zod';
import type { FormState } from '@/app/_shared/form/form-state';
import { shopDb, shopName } from '@/db/client';
import { ShopFileGoneError } from '@/db/file-mark';
import type { Env } from '@/db/ledger/ledger';
import type { Db } from '@/db/open';
import { wallClock } from '@/db/wall-clock';
import type { Action, Permit } from '@/lib/access/permit';
import { permit } from '@/lib/access/permit';
import { type Refusal, type Result, refuse } from '@/lib/result';
import { text } from './form-fields';
import { mendOf } from './mend';
import { wakeFigures } from './outlook';
import { currentActor } from './session';

type Command<A extends Action, I, T> = (db: Db, permit: Permit<A>, input: I, env: Env) => Result<T, Refusal>;

/**
 * The one way from a form to a command: parse once, ask leave, run. Gives the command's value, or the refusal as the
 * state that the form shows, with what was typed put back into its fields.
 */
export async function act<A extends Action, S extends z.ZodType, T>(
  door: { action: A; schema: S; command: Command<A, z.output<S>, T> },
  raw: unknown,
  typed: FormData,
): Promise<{ ok: true; value: T } | { ok: false; state: FormState }> {
  const parsed = door.schema.safeParse(raw);
  if (!parsed.success) {
    const issue = parsed.error.issues[0];
    const field = issue?.path.join('.');
    return {
      ok: false,
      state: refusedState(
        { code: 'input', sentence: issue?.message ?? 'Something here cannot be read.', field },
        typed,
      ),
    };
  }
  const wrongShop = shopFault(typed);
  if (wrongShop !== undefined) return { ok: false, state: refusedState(wrongShop, typed) };
  const leave = permit(await currentActor(), door.action);
  if (!leave.ok) return { ok: false, state: refusedState(leave.refusal, typed) };
  const result = door.command(shopDb(), leave.value, parsed.data, wallClock());
  if (result.ok) wakeFigures();
  return result.ok ? result : { ok: false, state: refusedState(result.refusal, typed) };
}

/** Why nothing can be entered in the shop being served, whoever asks: its file is gone, or the page showed another shop. */
function shopFault(typed: FormData): Refusal | undefined {
  try {
    shopDb();
  } catch (error) {
    if (error instanceof ShopFileGoneError) return refuse('file-gone', error.message).refusal;
    throw error;
  }
  const shown = text(typed, 'shop');
  if (shown === '' || shown === shopName()) return undefined;
  return refuse('shop', 'Nothing was entered: another shop was opened here meanwhile. Load this page again.')
    .refusal;
}

/** A refusal as the state of a form, with what was typed, and one press to send what was meant where that is plain. */
export function refusedState(refusal: Refusal, typed: FormData): FormState {
  const refused = {
    status: 'refused' as const,
    sentence: refusal.sentence,
    field: refusal.field ?? null,
    values: typedValues(typed),
  };
  const mend = mendOf(refusal, typed);
  return mend === undefined ? refused : { ...refused, mend };
}

/** What several fields sent under one name belongs to none of them: it is not given back. */
function typedValues(form: FormData): Record<string, string> {
  const values: Record<string, string> = {};
  for (const [name, value] of form) {
    const isOnce = form.getAll(name).length === 1;
    if (typeof value === 'string' && isOnce && !name.startsWith('$ACTION')) values[name] = value;
  }
  return values;
}
