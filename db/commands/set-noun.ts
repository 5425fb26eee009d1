import { SET_UP } from '../../lib/access/actor';
import type { Permit } from '../../lib/access/permit';
import { checkConeShape } from '../../lib/cone/geometry';
import type { Draft, EntryEnvelope } from '../../lib/ledger/event';
import type { ReadingSettings } from '../../lib/reading/reading-settings';
import type { Refusal, Result } from '../../lib/result';
import { ok, refuse } from '../../lib/result';
import type { Belief } from '../../lib/shop/belief';
import type { Costs } from '../../lib/shop/costs';
import type { GaugeSettings } from '../../lib/shop/gauge-settings';
import type { Connection, LifeGuess, Material, Person } from '../../lib/shop/noun';
import type { Part } from '../../lib/shop/part';
import type { Shop } from '../../lib/shop/shop-settings';
import { inToMm } from '../../lib/units/inch-mm';
import { derivedId } from '../ledger/derived-id';
import { findEntryRow } from '../ledger/entry-row';
import type { Env, Ledger, Recorded } from '../ledger/ledger';
import { write } from '../ledger/write';
import type { Db } from '../open';

/** One of the nouns that a single entry sets as a whole. */
export type Noun =
  | { readonly noun: 'shop'; readonly value: Shop }
  | { readonly noun: 'person'; readonly value: Person }
  | { readonly noun: 'connection'; readonly value: Connection }
  | { readonly noun: 'material'; readonly value: Material }
  | { readonly noun: 'part'; readonly value: Part }
  | { readonly noun: 'guess'; readonly value: LifeGuess }
  | { readonly noun: 'belief'; readonly value: Belief }
  | { readonly noun: 'reading-settings'; readonly value: ReadingSettings }
  | { readonly noun: 'gauge-settings'; readonly value: GaugeSettings }
  | { readonly noun: 'costs'; readonly value: Costs };

type Envelope = Omit<EntryEnvelope, 'subjectId'>;

/** Sets or replaces a noun of the shop's tables: its name and settings, people, sizes, materials, parts, first guesses. */
export function setNoun(
  db: Db,
  permit: Permit<'set-up-shop'>,
  input: Noun & { readonly envelope: Envelope },
  env: Env,
): Result<Recorded, Refusal> {
  return write(db, permit, env, (ledger) => setNounInto(ledger, input.envelope, input));
}

/** Sets several nouns at once, all or none; each entry's ID is the one sent with its place in the list. */
export function setNouns(
  db: Db,
  permit: Permit<'set-up-shop'>,
  input: { readonly envelope: Envelope; readonly nouns: readonly Noun[] },
  env: Env,
): Result<{ readonly count: number }, Refusal> {
  return write(db, permit, env, (ledger) => {
    for (const [place, noun] of input.nouns.entries()) {
      const id = derivedId(input.envelope.id, String(place));
      const set = setNounInto(ledger, { ...input.envelope, id }, noun);
      if (!set.ok) return set;
    }
    return ok({ count: input.nouns.length });
  });
}

/** The IDs of the entries that `setNouns` wrote under the one sent, in order; none when it was never sent. */
export function sentNounIds(db: Db, entryId: string): string[] {
  const ids: string[] = [];
  for (let id = derivedId(entryId, '0'); findEntryRow(db.$client, id) !== undefined; ) {
    ids.push(id);
    id = derivedId(entryId, String(ids.length));
  }
  return ids;
}

/** The same as `setNoun` inside a transaction already open. */
export function setNounInto(ledger: Ledger, envelope: Envelope, set: Noun): Result<Recorded, Refusal> {
  const draft = draftOf(envelope, set);
  const before = ledger.knows(draft);
  if (before !== undefined) return before;
  const checked = checkNoun(ledger, set);
  return checked.ok ? ledger.record(draft) : checked;
}

function draftOf(envelope: Envelope, set: Noun): Draft {
  switch (set.noun) {
    case 'shop':
      return { ...envelope, kind: 'shop-set', subjectId: 'shop', payload: set.value };
    case 'person':
      return { ...envelope, kind: 'person-set', subjectId: set.value.id, payload: set.value };
    case 'connection':
      return { ...envelope, kind: 'connection-set', subjectId: set.value.id, payload: set.value };
    case 'material':
      return { ...envelope, kind: 'material-set', subjectId: set.value.id, payload: set.value };
    case 'part':
      return { ...envelope, kind: 'part-set', subjectId: set.value.id, payload: set.value };
    case 'reading-settings':
      return {
        ...envelope,
        kind: 'reading-settings-set',
        subjectId: 'reading-settings',
        payload: set.value,
      };
    case 'gauge-settings':
      return { ...envelope, kind: 'gauge-settings-set', subjectId: 'gauge-settings', payload: set.value };
    case 'costs':
      return { ...envelope, kind: 'costs-set', subjectId: 'costs', payload: set.value };
    case 'belief':
      return { ...envelope, kind: 'belief-set', subjectId: set.value.kind, payload: set.value };
    case 'guess':
      return { ...envelope, kind: 'life-guess-set', subjectId: set.value.partId, payload: set.value };
  }
}

function checkNoun(ledger: Ledger, set: Noun): Result<unknown, Refusal> {
  if (set.noun === 'connection') return checkConnection(set.value);
  if (set.noun === 'part') return checkNames(ledger, set.value);
  if (set.noun === 'person') return checkPerson(set.value);
  if (set.noun !== 'guess') return ok(null);
  if (ledger.find('part', set.value.partId) === undefined)
    return refuse('unknown-part', 'Choose the part first: the shop knows no such part.', 'partId');
  if (ledger.find('connection', set.value.connectionId) === undefined)
    return refuse('unknown-connection', 'Choose a size and service from the table.', 'connectionId');
  return ok(null);
}

/** Nobody takes the key of the hand that filled the shop before it had people: the history would name the wrong one. */
function checkPerson({ id, name }: Person): Result<null, Refusal> {
  return id === SET_UP.personId
    ? refuse('reserved', `${name} stands for the first set-up in the history. Choose another name.`, 'name')
    : ok(null);
}

/** A part names only sizes and materials that the shop has rows for. */
function checkNames(ledger: Ledger, part: Part): Result<null, Refusal> {
  const connectionId = part.fitsConnectionIds.find((id) => ledger.find('connection', id) === undefined);
  if (connectionId !== undefined)
    return refuse(
      'unknown-connection',
      `${part.name} is to serve ${connectionId}, for which the shop has no table row. Add it first.`,
      'fitsConnectionIds',
    );
  const permitted = part.permittedMaterialIds === 'all' ? [] : part.permittedMaterialIds;
  const materialId = permitted.find((id) => ledger.find('material', id) === undefined);
  if (materialId !== undefined)
    return refuse(
      'unknown-material',
      `${part.name} is permitted on ${materialId}, a material the shop does not know. Add it first.`,
      'permittedMaterialIds',
    );
  return ok(null);
}

/** A cone that cannot be cut (nose wider than the tube) never enters the table. */
function checkConnection(connection: Connection): Result<unknown, Refusal> {
  const { odNum, odDen, noseMm, coneAngleDeg } = connection;
  return checkConeShape({ odMm: inToMm(odNum / odDen), noseMm, coneAngleDeg });
}
