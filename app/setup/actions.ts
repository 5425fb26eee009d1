'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import type { z } from 'zod';
import { act, refusedState } from '@/app/_server/act';
import { number, numberOrNull, stamp, text, textOrNull } from '@/app/_server/form-fields';
import { chooseActor } from '@/app/_server/session';
import type { FormState } from '@/app/_shared/form/form-state';
import { keyFromName } from '@/app/_shared/form/key-from-name';
import { shopDb, switchShop } from '@/db/client';
import { countIn } from '@/db/commands/count-in';
import { type Noun, setNouns } from '@/db/commands/set-noun';
import { addSizes, foundShop } from '@/db/commands/set-up-shop';
import { listPeople } from '@/db/queries/shop';
import { listMaterials } from '@/db/queries/tables';
import {
  AddSizesInput,
  CountInInput,
  FoundShopInput,
  SetGuessesInput,
  SetMaterialInput,
  SetPersonInput,
  SetShopInput,
} from '@/lib/shop/set-up-input';
import { countedParts, guessRows, personOf, shopOf, tickedSizes } from './form-readers';

const ACTION = 'set-up-shop' as const;

/** Leaves the demo for a shop of one's own: made empty if there is none yet. The demo stays as it is. */
export async function startOwnShop(): Promise<void> {
  switchShop('shop');
  revalidatePath('/', 'layout');
  redirect('/setup');
}

/** Goes back to the demo shop. */
export async function openDemo(): Promise<void> {
  switchShop('demo');
  revalidatePath('/', 'layout');
  redirect('/');
}

/** The first page of a new shop. Whoever founds it is acting from then on. */
export async function foundShopAction(_state: FormState, form: FormData): Promise<FormState> {
  const person = personOf(form);
  const raw = { ...stamp(form), shop: shopOf(form), person, connectionIds: tickedSizes(form) };
  const done = await act({ action: ACTION, schema: FoundShopInput, command: foundShop }, raw, form);
  if (!done.ok) return done.state;
  await chooseActor(person.id);
  revalidatePath('/', 'layout');
  redirect('/setup');
}

export async function addSizesAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = { ...stamp(form), connectionIds: tickedSizes(form) };
  const done = await act({ action: ACTION, schema: AddSizesInput, command: addSizes }, raw, form);
  return saved(done, 'The sizes are in use. Check their first guesses and count what is on the shelf.');
}

export async function setShopAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = { ...stamp(form), shop: shopOf(form) };
  return saved(
    await setting(SetShopInput, ({ shop }) => [{ noun: 'shop', value: shop }], raw, form),
    'Saved.',
  );
}

export async function setPersonAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = { ...stamp(form), person: personOf(form) };
  const known = listPeople(shopDb()).find(({ id }) => id === raw.person.id);
  if (known !== undefined && known.name !== raw.person.name) {
    const sentence = `${known.name} is entered already and the two names read alike. Choose another name.`;
    return refusedState({ code: 'exists', sentence, field: 'name' }, form);
  }
  const done = await setting(SetPersonInput, ({ person }) => [{ noun: 'person', value: person }], raw, form);
  return saved(done, `${raw.person.name} can be chosen from now on.`);
}

export async function setMaterialAction(_state: FormState, form: FormData): Promise<FormState> {
  const newKey = keyFromName(`${text(form, 'name')} ${text(form, 'condition')}`);
  if (text(form, 'id') === '' && listMaterials(shopDb()).some(({ id }) => id === newKey)) {
    return refusedState(
      {
        code: 'exists',
        sentence: 'The table has this material already. Change its row instead.',
        field: 'name',
      },
      form,
    );
  }
  const raw = {
    ...stamp(form),
    material: {
      id: text(form, 'id') || newKey,
      name: text(form, 'name'),
      condition: text(form, 'condition'),
      factor: number(form, 'factor'),
      factorGiveOrTake: number(form, 'factorGiveOrTake'),
      isReference: text(form, 'isReference') === 'yes',
    },
  };
  return saved(
    await setting(SetMaterialInput, ({ material }) => [{ noun: 'material', value: material }], raw, form),
    'Saved.',
  );
}

export async function setGuessesAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = { ...stamp(form), guesses: guessRows(form) };
  const nouns = ({ guesses }: z.output<typeof SetGuessesInput>) =>
    guesses.map((value): Noun => ({ noun: 'guess', value }));
  return saved(
    await setting(SetGuessesInput, nouns, raw, form),
    'Saved. Every estimate now starts from these.',
  );
}

export async function countInAction(_state: FormState, form: FormData): Promise<FormState> {
  const counts = countedParts(form).map((partId) => ({
    partId,
    count: number(form, `count-${partId}`),
    opening: text(form, `opening-${partId}`) || 'new',
    dueOnDay: textOrNull(form, `due-${partId}`),
    levelMl: numberOrNull(form, `level-${partId}`),
  }));
  const raw = { ...stamp(form), onDay: text(form, 'onDay'), counts };
  const done = await act({ action: 'receive-tool', schema: CountInInput, command: countIn }, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  const { toolIds } = done.value;
  return { status: 'done', sentence: `${toolIds.length} in the record. Mark them: ${toolIds.join(', ')}.` };
}

type Done = Awaited<ReturnType<typeof act<typeof ACTION, z.ZodType, { count: number }>>>;

function saved(done: Done, sentence: string): FormState {
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  return { status: 'done', sentence };
}

/** Sets nouns read from a form, all or none. */
async function setting<S extends z.ZodType<{ entryId: string; deviceAtMs: number }>>(
  schema: S,
  nounsOf: (input: z.output<S>) => Noun[],
  raw: object,
  form: FormData,
): Promise<Done> {
  const parsed = schema.safeParse(raw);
  if (!parsed.success) {
    const issue = parsed.error.issues[0];
    const refusal = {
      code: 'input',
      sentence: issue?.message ?? 'Something here cannot be read.',
      field: String(issue?.path.at(-1) ?? ''),
    };
    return { ok: false, state: refusedState(refusal, form) };
  }
  const { entryId: id, deviceAtMs } = parsed.data;
  const nouns = nounsOf(parsed.data);
  const command = (
    db: Parameters<typeof setNouns>[0],
    permit: Parameters<typeof setNouns>[1],
    _input: unknown,
    env: { nowMs: number },
  ) => setNouns(db, permit, { envelope: { id, deviceAtMs, reason: '' }, nouns }, env);
  return act({ action: ACTION, schema, command }, raw, form);
}
