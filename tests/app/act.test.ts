import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { act, refusedState } from '@/app/_server/act';
import { chooseActor, currentActor } from '@/app/_server/session';
import { logCut } from '@/db/commands/log-cut';
import { addSizes } from '@/db/commands/set-up-shop';
import type { Db } from '@/db/open';
import { findEntry } from '@/db/queries/entries';
import { SET_UP } from '@/lib/access/actor';
import { LogCutInput } from '@/lib/shop/command-input';
import { AddSizesInput } from '@/lib/shop/set-up-input';
import { ASH, DIE, dump, entered, HIGH, receive, testDb, testShop } from '../support/db';

/** The cookies of one device: the only thing of the framework that is stood in for. */
const jar = new Map<string, string>();
vi.mock('next/headers', () => ({
  cookies: async () => ({
    get: (name: string) => (jar.has(name) ? { name, value: jar.get(name) } : undefined),
    set: (name: string, value: string) => void jar.set(name, value),
  }),
}));

/** Where db/client keeps the shop being served. */
const holder = globalThis as { [key: symbol]: unknown };
const SERVED = Symbol.for('edgekeep.opened-shop');

let db: Db;
function serve(shop: Db): void {
  db = shop;
  holder[SERVED] = { name: 'shop', db };
}

beforeEach(() => {
  jar.clear();
  serve(testShop());
  receive(db, 'D-56-01', DIE);
});
afterEach(() => {
  delete holder[SERVED];
});

const door = { action: 'log-cut', schema: LogCutInput, command: logCut } as const;
const raw = (change: object = {}) => ({
  ...{ ...entered(), toolId: 'D-56-01', connectionId: HIGH.id, materialId: '316', ends: 4, goodEnds: 4 },
  ...change,
});

function typed(fields: Readonly<Record<string, string>> = {}): FormData {
  const form = new FormData();
  for (const [name, value] of Object.entries({ ends: '4', $ACTION_ID: 'x', ...fields }))
    form.set(name, value);
  return form;
}

// source: hand. Parse, ask leave, run: what fails first is what the form shows, with what was typed put back.
describe('act', () => {
  it('runs the command as whoever chose a name at this device', async () => {
    await chooseActor('ash');
    const done = await act(door, raw({ entryId: 'from-a-form' }), typed());
    expect(done).toMatchObject({ ok: true, value: { id: 'from-a-form', alreadyRecorded: false } });
    expect(findEntry(db, 'from-a-form')).toMatchObject({ actorName: 'Ash Moor', payload: { ends: 4 } });
  });

  it('sent twice counts once', async () => {
    await chooseActor('ash');
    const sent = raw();
    await act(door, sent, typed());
    const before = dump(db);
    expect(await act(door, sent, typed())).toMatchObject({ ok: true, value: { alreadyRecorded: true } });
    expect(dump(db)).toEqual(before);
  });

  it('refuses what cannot be read, at its field, and puts back what was typed', async () => {
    await chooseActor('ash');
    const before = dump(db);
    const done = await act(door, raw({ ends: Number.NaN }), typed({ ends: 'four' }));
    expect(done).toEqual({
      ok: false,
      state: {
        status: 'refused',
        sentence: 'Ends cut must be a number.',
        field: 'ends',
        values: { ends: 'four' },
      },
    });
    expect(dump(db)).toEqual(before);
  });

  it('refuses whoever has not chosen a name, or one that the shop no longer knows', async () => {
    const before = dump(db);
    const nobody = {
      ok: false,
      state: { sentence: 'Say who you are first: choose your name.', field: null },
    };
    expect(await act(door, raw(), typed())).toMatchObject(nobody);
    await chooseActor('somebody-gone');
    expect(await act(door, raw(), typed())).toMatchObject(nobody);
    expect(dump(db)).toEqual(before);
  });

  it('shows the command’s own refusal', async () => {
    await chooseActor('ash');
    const done = await act(door, raw({ toolId: 'D-56-99' }), typed());
    expect(done).toMatchObject({ ok: false, state: { status: 'refused', field: 'toolId' } });
  });

  it('lets whoever opens an empty shop set it up, and nobody else', async () => {
    serve(testDb());
    expect(await currentActor()).toEqual(SET_UP);
    const setUp = { action: 'set-up-shop', schema: AddSizesInput, command: addSizes } as const;
    expect((await act(setUp, { ...entered(), connectionIds: ['3-8-medium'] }, typed())).ok).toBe(true);
    serve(testShop());
    expect(await currentActor()).toBeNull();
    await chooseActor('ash');
    expect(await currentActor()).toEqual(ASH);
  });
});

// source: hand. Another tablet may open the demo while a form of the shop is being filled in here, and the other way round.
it('a form filled in for one shop is not entered in another', async () => {
  await chooseActor('ash');
  const before = dump(db);
  expect(await act(door, raw(), typed({ shop: 'demo' }))).toMatchObject({
    ok: false,
    state: { sentence: 'Nothing was entered: another shop was opened here meanwhile. Load this page again.' },
  });
  expect(dump(db)).toEqual(before);
  expect((await act(door, raw(), typed({ shop: 'shop' }))).ok).toBe(true);
});

// source: hand. The framework's own fields are no typing, nor is a file.
it('refusedState puts back what was typed and nothing else', () => {
  const form = typed({ heat: ' H1 ' });
  form.set('file', new Blob(['x']), 'cuts.csv');
  expect(refusedState({ code: 'x', sentence: 'No.' }, form)).toEqual({
    status: 'refused',
    sentence: 'No.',
    field: null,
    values: { ends: '4', heat: ' H1 ' },
  });
});

// source: hand. Two fields of one name would both be filled with the last of them.
it('refusedState gives nothing back of a name that several fields sent', () => {
  const form = typed();
  for (const gauge of ['G-56-GO-1', 'G-56-NG-1']) form.append('gaugeId', gauge);
  expect(refusedState({ code: 'x', sentence: 'No.' }, form)).toMatchObject({ values: { ends: '4' } });
  expect(refusedState({ code: 'x', sentence: 'No.' }, form)).not.toHaveProperty('values.gaugeId');
});
