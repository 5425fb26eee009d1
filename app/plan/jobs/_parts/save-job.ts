import 'server-only';
import { planJob } from '@/db/commands/plan-job';
import type { Env, Recorded } from '@/db/ledger/ledger';
import type { Db } from '@/db/open';
import { findEntry } from '@/db/queries/entries';
import { findJob, listLinesOfJob } from '@/db/queries/jobs';
import type { Permit } from '@/lib/access/permit';
import { type Refusal, type Result, refuse } from '@/lib/result';
import type { PlanJob } from '@/lib/shop/command-input';

type Outcome = Result<Recorded, Refusal>;

/** Enters a job under a number that is not yet taken. The same sending twice still counts once. */
export function enterJob(db: Db, permit: Permit<'plan-job'>, input: PlanJob, env: Env): Outcome {
  const { id } = input.job;
  if (findJob(db, id) !== undefined && findEntry(db, input.entryId) === undefined)
    return refuse(
      'job-exists',
      `Job ${id} is already in the record. Open it to change it, or take another number.`,
      'id',
    );
  return planJob(db, permit, input, env);
}

/** Changes a job that is there. A line on which ends are logged stays: its wear is already on the tools. */
export function changeJob(db: Db, permit: Permit<'plan-job'>, input: PlanJob, env: Env): Outcome {
  const { id, lines } = input.job;
  if (findJob(db, id) === undefined) return refuse('unknown-job', `No job ${id} is in the record.`, 'id');
  const kept = new Set(lines.map(({ lineNo }) => lineNo));
  const lost = listLinesOfJob(db, id).find(
    ({ lineNo, goodCones, goodThreads }) => !kept.has(lineNo) && goodCones + goodThreads > 0,
  );
  if (lost !== undefined)
    return refuse(
      'line-begun',
      `Line ${lost.lineNo} has ends logged on it and cannot be removed. Lower its ends, or close the job.`,
    );
  return planJob(db, permit, input, env);
}
