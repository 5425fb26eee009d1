import type { Permit } from '../../lib/access/permit';
import { invariant } from '../../lib/invariant';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import { additionsForSizes } from '../../lib/shipped/nouns-for-sizes';
import { type ConnectionTyped, connectionOfTyped } from '../../lib/shop/connection-input';
import type { Connection } from '../../lib/shop/noun';
import type { Env } from '../ledger/ledger';
import { holdsAll } from '../ledger/same-content';
import { write } from '../ledger/write';
import type { Db } from '../open';
import { listConnections, listLifeGuesses, listMaterials, listParts } from '../queries/tables';
import { sentNounIds, setNouns } from './set-noun';
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
  const sent = sentNounIds(db, input.entryId);
  if (sent.length > 0) return sentBefore(db, permit, { sent, row: row.value }, env);
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

/** What came of the row when it was sent before: done, if it is still the same row. */
function sentBefore(
  db: Db,
  permit: Permit<'set-up-shop'>,
  { sent, row }: { sent: readonly string[]; row: Connection },
  env: Env,
): Result<{ connectionId: string }, Refusal> {
  return write(db, permit, env, (ledger) => {
    let last: Result<unknown, Refusal> | undefined;
    for (const id of sent) {
      last = ledger.sentBefore(
        id,
        '',
        ({ kind, payload }) => kind === 'connection-set' && holdsAll(payload, row),
      );
      if (last?.ok) return ok({ connectionId: row.id });
    }
    invariant(last !== undefined && !last.ok, 'an entry that was found is the same or refused');
    return last;
  });
}
