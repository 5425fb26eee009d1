import { dayLabel } from '../calendar/day-text';
import { ok, type Refusal, type Result, refuse } from '../result';
import type { LineCleaned } from '../shop/cleaning';
import { DUTY_LABEL, HELD_FOR_CLEANING } from '../shop/duty';
import type { Job } from '../shop/job';
import type { Entry } from './event';

/** A job with how it stands, and what was written down of the cleaning of its lines. */
export interface JobRecord extends Job {
  readonly status: 'open' | 'done' | 'cancelled';
  readonly cleanings: readonly LineCleaned[];
  /** The day it left the house; absent while it is here. */
  readonly shippedOnDay?: string;
}

/** One more entry in a job's history: setting it again replaces its lines; a closed job must be set again to reopen. */
export function evolveJob(job: JobRecord | undefined, entry: Entry): Result<JobRecord, Refusal> {
  if (entry.kind === 'job-set') {
    const numbers = new Set(entry.payload.lines.map((line) => line.lineNo));
    if (numbers.size !== entry.payload.lines.length)
      return refuse('lines', `Job ${entry.subjectId} has the same line number twice.`);
    const cleanings = (job?.cleanings ?? []).filter(({ lineNo }) => isSameWork(job, entry.payload, lineNo));
    // What left the house stays gone when the job is planned anew.
    const gone = job?.shippedOnDay === undefined ? {} : { shippedOnDay: job.shippedOnDay };
    return ok({ ...entry.payload, status: 'open', cleanings, ...gone });
  }
  if (job === undefined) return refuse('unknown-job', `No job ${entry.subjectId} is in the record.`);
  if (entry.kind === 'line-cleaned') return cleaned(job, entry.payload);
  if (entry.kind === 'job-shipped') return shipped(job, entry.payload.onDay);
  if (entry.kind !== 'job-closed') return refuse('kind', `An entry "${entry.kind}" cannot be about a job.`);
  if (job.status !== 'open') return refuse('closed', `Job ${job.id} is already ${job.status}.`);
  const held = entry.payload.how === 'done' ? whyHeld(job) : null;
  return held ?? ok({ ...job, status: entry.payload.how });
}

/** Whether a line is still what it was when it was cleaned: of the same size and material, for the same duty. */
function isSameWork(before: Job | undefined, after: Job, lineNo: number): boolean {
  const was = before?.lines.find((line) => line.lineNo === lineNo);
  const is = after.lines.find((line) => line.lineNo === lineNo);
  if (was === undefined || is === undefined) return false;
  const sameTube = was.connectionId === is.connectionId && was.materialId === is.materialId;
  return sameTube && (was.duty ?? 'ordinary') === (is.duty ?? 'ordinary');
}

function shipped(job: JobRecord, onDay: string): Result<JobRecord, Refusal> {
  if (job.status === 'cancelled') return refuse('closed', `Job ${job.id} is cancelled.`);
  if (job.shippedOnDay !== undefined)
    return refuse('shipped', `Job ${job.id} already left on ${dayLabel(job.shippedOnDay)}.`);
  return whyHeld(job) ?? ok({ ...job, shippedOnDay: onDay });
}

function cleaned(job: JobRecord, cleaning: LineCleaned): Result<JobRecord, Refusal> {
  if (job.status === 'cancelled') return refuse('closed', `Job ${job.id} is cancelled.`);
  if (!job.lines.some(({ lineNo }) => lineNo === cleaning.lineNo))
    return refuse('line', `Job ${job.id} has no line ${cleaning.lineNo}.`, 'lineNo');
  return ok({ ...job, cleanings: [...job.cleanings, cleaning] });
}

/** Why nothing of the job leaves: a line for a duty that asks for a cleaning record, and none written down. */
function whyHeld({ id, lines, cleanings }: JobRecord): Result<never, Refusal> | null {
  const held = lines.find(
    ({ lineNo, duty = 'ordinary' }) =>
      HELD_FOR_CLEANING.includes(duty) && !cleanings.some((cleaning) => cleaning.lineNo === lineNo),
  );
  if (held === undefined) return null;
  return refuse(
    'held',
    `Line ${held.lineNo} of job ${id} is for ${DUTY_LABEL[held.duty ?? 'ordinary']}: it is held until its cleaning is written down.`,
  );
}
