import type { Permit } from '../../lib/access/permit';
import type { Entry } from '../../lib/ledger/event';
import type { Refusal, Result } from '../../lib/result';
import type { CloseJob, PlanJob } from '../../lib/shop/command-input';
import type { Env, Recorded } from '../ledger/ledger';
import { holdsAll } from '../ledger/same-content';
import { write } from '../ledger/write';
import type { Db } from '../open';

/**
 * Enters a job, or replaces its lines. A size or material that the shop has no row for is taken as it stands: the plan
 * then says what is missing. Nothing is guessed.
 */
export function planJob(
  db: Db,
  permit: Permit<'plan-job'>,
  input: PlanJob,
  env: Env,
): Result<Recorded, Refusal> {
  const { entryId: id, deviceAtMs, reason, job } = input;
  const { shown: _, ...asked } = job;
  // What was shown is worked out anew at every sending, so it does not tell one plan from another.
  const isSame = (entry: Entry) =>
    entry.kind === 'job-set' && entry.subjectId === job.id && holdsAll(entry.payload, asked);
  return write(
    db,
    permit,
    env,
    (ledger) =>
      ledger.sentBefore(id, reason, isSame) ??
      ledger.record({ id, deviceAtMs, reason, kind: 'job-set', subjectId: job.id, payload: job }),
  );
}

/** Closes a job: done, or cancelled. Wear already logged stays. */
export function closeJob(
  db: Db,
  permit: Permit<'plan-job'>,
  input: CloseJob,
  env: Env,
): Result<Recorded, Refusal> {
  const { entryId: id, deviceAtMs, reason, jobId, how } = input;
  return write(db, permit, env, (ledger) =>
    ledger.record({ id, deviceAtMs, reason, kind: 'job-closed', subjectId: jobId, payload: { how } }),
  );
}
