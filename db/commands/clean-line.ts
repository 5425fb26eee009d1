import type { Permit } from '../../lib/access/permit';
import type { Refusal, Result } from '../../lib/result';
import type { CleanLine } from '../../lib/shop/fluid-input';
import type { Env, Recorded } from '../ledger/ledger';
import { write } from '../ledger/write';
import type { Db } from '../open';

/** Writes down the cleaning of a line: who wrote it, by which procedure, with what evidence. It releases the hold. */
export function cleanLine(
  db: Db,
  permit: Permit<'plan-job'>,
  input: CleanLine,
  env: Env,
): Result<Recorded, Refusal> {
  const { entryId: id, deviceAtMs, reason, jobId, lineNo, procedure, onDay, evidence } = input;
  const payload = { lineNo, procedure, onDay, evidence };
  return write(db, permit, env, (ledger) =>
    ledger.record({ id, deviceAtMs, reason, kind: 'line-cleaned', subjectId: jobId, payload }),
  );
}
