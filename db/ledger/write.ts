import { SqliteError } from 'better-sqlite3';
import type { Permit } from '../../lib/access/permit';
import { type Refusal, type Result, refuse } from '../../lib/result';
import type { Db } from '../open';
import { type Env, Ledger } from './ledger';

/** Carries a refusal out of a transaction, so that the transaction rolls back. */
class RolledBack extends Error {
  constructor(readonly refusal: Refusal) {
    super(refusal.sentence);
  }
}

/**
 * Runs one command's work against the ledger in one immediate transaction: all of it, or none of it. A refusal rolls
 * everything back and is returned. Synchronous on purpose: an async callback would run outside the transaction.
 */
export function write<T>(
  db: Db,
  permit: Permit,
  env: Env,
  work: (ledger: Ledger) => Result<T, Refusal>,
  batchId: string | null = null,
): Result<T, Refusal> {
  const run = db.$client.transaction(() => {
    const ledger = new Ledger(db.$client, permit.actor, env, batchId);
    const result = work(ledger);
    if (!result.ok) throw new RolledBack(result.refusal);
    ledger.flush();
    return result;
  });
  try {
    return run.immediate();
  } catch (error) {
    if (error instanceof RolledBack) return { ok: false, refusal: error.refusal };
    if (error instanceof SqliteError) return refusalOfSqlite(error);
    throw error;
  }
}

/** What the database itself refused, said for people; anything else is a bug and is thrown on. */
function refusalOfSqlite(error: InstanceType<typeof SqliteError>): Result<never, Refusal> {
  if (error.code === 'SQLITE_CONSTRAINT_FOREIGNKEY') {
    return refuse(
      'in-use',
      'Nothing was changed: other records still use this, or it names something that the shop does not know.',
    );
  }
  if (error.code === 'SQLITE_CONSTRAINT_UNIQUE' && error.message.includes('look_up_key')) {
    return refuse(
      'look-alike',
      'Another tool has an ID that reads the same (O and 0, I and 1 count as one). Choose another ID.',
    );
  }
  if (error.code === 'SQLITE_FULL')
    return refuse('disk-full', 'Nothing was changed: the disk is full. Make room, then enter it again.');
  if (error.code.startsWith('SQLITE_READONLY'))
    return refuse('read-only', 'Nothing was changed: this record can be read but not written.');
  if (error.code.startsWith('SQLITE_BUSY'))
    return refuse('busy', 'Nothing was changed: the record is busy. Try again in a moment.');
  throw error;
}
