import type { Permit } from '../../lib/access/permit';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import { additionsForSizes } from '../../lib/shipped/nouns-for-sizes';
import { type ConnectionTyped, connectionOfTyped } from '../../lib/shop/connection-input';
import type { Env } from '../ledger/ledger';
import type { Db } from '../open';
import { listConnections, listLifeGuesses, listMaterials, listParts } from '../queries/tables';
import { setNouns } from './set-noun';
import { nounsOf } from './set-up-shop';

/**
 * Writes a row of the size table as the shop read it in the fitting maker's manual: a row it has is replaced, a new one
 * brings the parts of its complete set along. What was cut before keeps the exposure it was logged with.
 */
export function setConnection(
  db: Db,
  permit: Permit<'set-up-shop'>,
  input: ConnectionTyped & { readonly isNew: boolean },
  env: Env,
): Result<{ connectionId: string }, Refusal> {
  const row = connectionOfTyped(input);
  if (!row.ok) return row;
  const known = {
    connections: listConnections(db),
    materials: listMaterials(db),
    parts: listParts(db),
    guesses: listLifeGuesses(db),
  };
  const exists = known.connections.some(({ id }) => id === row.value.id);
  if (exists && input.isNew)
    return refuse(
      'exists',
      'The size table has this size and service already. Change its row instead.',
      'size',
    );
  const nouns = exists
    ? [{ noun: 'connection', value: row.value } as const]
    : nounsOf(additionsForSizes([row.value], known));
  const envelope = { id: input.entryId, deviceAtMs: input.deviceAtMs, reason: '' };
  const set = setNouns(db, permit, { envelope, nouns }, env);
  return set.ok ? ok({ connectionId: row.value.id }) : set;
}
