import type { Permit } from '../../lib/access/permit';
import type { Refusal, Result } from '../../lib/result';
import type { Conflict } from '../../lib/shop/conflict';
import type { SettleConflict } from '../../lib/shop/kit-input';
import type { Env, Recorded } from '../ledger/ledger';
import { write } from '../ledger/write';
import type { Db } from '../open';

/** Keeps what a bench entered and the record could not take, as it was sent. */
export function raiseConflict(
  db: Db,
  leave: Permit<'log-cut'>,
  about: { readonly id: string; readonly deviceAtMs: number; readonly conflict: Conflict },
  env: Env,
): Result<Recorded, Refusal> {
  const { id, deviceAtMs, conflict: payload } = about;
  return write(db, leave, env, (ledger) =>
    ledger.record({ id, deviceAtMs, reason: '', subjectId: id, kind: 'conflict-raised', payload }),
  );
}

/** Settles a conflict: it was entered by hand in another way, or it is dropped; with what was done. */
export function settleConflict(
  db: Db,
  leave: Permit<'settle-conflict'>,
  input: SettleConflict,
  env: Env,
): Result<Recorded, Refusal> {
  const { entryId: id, deviceAtMs, reason, conflictId: subjectId, how, note } = input;
  const payload = { how, note };
  return write(db, leave, env, (ledger) =>
    ledger.record({ id, deviceAtMs, reason, subjectId, kind: 'conflict-settled', payload }),
  );
}
