import type { Permit } from '../../lib/access/permit';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import type { ShipJob } from '../../lib/shop/acceptance-input';
import type { Env, Recorded } from '../ledger/ledger';
import { holdsAll } from '../ledger/same-content';
import { write } from '../ledger/write';
import type { Db } from '../open';
import { findLineStanding } from '../queries/acceptance';
import { listLinesOfJob } from '../queries/jobs';
import { listPiecesOwedOn } from '../queries/pieces-owed';

/**
 * A job leaves the house. Not while ends of it are held: without a recorded gauge, or suspect in a recall; nor while pieces of
 * a tool that broke on it are searched for.
 */
export function shipJob(
  db: Db,
  permit: Permit<'ship-job'>,
  input: ShipJob,
  env: Env,
): Result<Recorded, Refusal> {
  const { entryId: id, deviceAtMs, reason, jobId, onDay } = input;
  return write(db, permit, env, (ledger) => {
    const before = ledger.sentBefore(
      id,
      reason,
      (entry) =>
        entry.kind === 'job-shipped' && entry.subjectId === jobId && holdsAll(entry.payload, { onDay }),
    );
    if (before !== undefined) return before;
    const free = checkFree(db, jobId);
    if (!free.ok) return free;
    return ledger.record({
      id,
      deviceAtMs,
      reason,
      kind: 'job-shipped',
      subjectId: jobId,
      payload: { onDay },
    });
  });
}

function checkFree(db: Db, jobId: string): Result<null, Refusal> {
  for (const line of listLinesOfJob(db, jobId)) {
    const [owed] = listPiecesOwedOn(db, line.id);
    if (owed !== undefined)
      return refuse(
        'pieces',
        `Pieces of ${owed}, which was out for ${line.id}, are still to be found: one may lie in a tube. Write down what the search found first.`,
      );
    const { held } = findLineStanding(db, line.id);
    const ends = held.reduce((sum, one) => sum + one.ends, 0);
    if (ends > 0)
      return refuse(
        'held',
        `${ends} ${ends === 1 ? 'end' : 'ends'} of ${line.id} cannot be released yet: ${held.some(({ why }) => why === 'suspect') ? 'a recall is open on them' : 'no gauge is recorded for them'}. See to these first.`,
      );
  }
  return ok(null);
}
