import type { Permit } from '../../lib/access/permit';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import { SHIPPED_CONNECTIONS } from '../../lib/shipped/connections';
import { additionsForSizes, type SizeAdditions } from '../../lib/shipped/nouns-for-sizes';
import type { FoundShop } from '../../lib/shop/set-up-input';
import type { Env } from '../ledger/ledger';
import type { Db } from '../open';
import { findShop } from '../queries/shop';
import { listConnections, listLifeGuesses, listMaterials, listParts } from '../queries/tables';
import { type Noun, sentNounIds, setNouns } from './set-noun';

/** Founds a shop of one's own: its name, its first person, the sizes in use with their sets, first guesses and materials. Sent twice it counts once. */
export function foundShop(
  db: Db,
  permit: Permit<'set-up-shop'>,
  input: FoundShop,
  env: Env,
): Result<{ count: number }, Refusal> {
  const { entryId: id, deviceAtMs, shop, person } = input;
  const envelope = { id, deviceAtMs, reason: 'first set-up' };
  const named: Noun[] = [
    { noun: 'shop', value: shop },
    { noun: 'person', value: person },
  ];
  const sent = sentNounIds(db, id);
  if (sent.length > 0) {
    const same = setNouns(db, permit, { envelope, nouns: named }, env);
    return same.ok ? ok({ count: sent.length }) : same;
  }
  if (findShop(db) !== undefined) return refuse('founded', 'This shop is set up already.');
  const additions = additionsFor(db, input.connectionIds);
  if (!additions.ok) return additions;
  return setNouns(db, permit, { envelope, nouns: [...named, ...nounsOf(additions.value)] }, env);
}

/** Takes more of the shipped example sizes into use, with everything a complete set for them needs in the tables. */
export function addSizes(
  db: Db,
  permit: Permit<'set-up-shop'>,
  input: { entryId: string; deviceAtMs: number; connectionIds: readonly string[] },
  env: Env,
): Result<{ count: number }, Refusal> {
  const { entryId: id, deviceAtMs } = input;
  const additions = additionsFor(db, input.connectionIds);
  if (!additions.ok) return additions;
  const nouns = nounsOf(additions.value);
  return setNouns(db, permit, { envelope: { id, deviceAtMs, reason: 'size taken into use' }, nouns }, env);
}

function additionsFor(db: Db, connectionIds: readonly string[]): Result<SizeAdditions, Refusal> {
  const wanted = SHIPPED_CONNECTIONS.filter(({ id }) => connectionIds.includes(id));
  if (wanted.length !== new Set(connectionIds).size) {
    return refuse(
      'unknown-size',
      'One of these sizes is not among the examples; add it by hand.',
      'connectionIds',
    );
  }
  const known = {
    connections: listConnections(db),
    materials: listMaterials(db),
    parts: listParts(db),
    guesses: listLifeGuesses(db),
  };
  return ok(additionsForSizes(wanted, known));
}

/** The nouns in the order in which they refer to each other. */
export function nounsOf({ materials, connections, parts, guesses }: SizeAdditions): Noun[] {
  return [
    ...materials.map((value) => ({ noun: 'material', value }) as const),
    ...connections.map((value) => ({ noun: 'connection', value }) as const),
    ...parts.map((value) => ({ noun: 'part', value }) as const),
    ...guesses.map((value) => ({ noun: 'guess', value }) as const),
  ];
}
