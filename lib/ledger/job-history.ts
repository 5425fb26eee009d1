import { ok, type Refusal, type Result, refuse } from '../result';
import type { Job } from '../shop/job';
import type { Entry } from './event';

/** A job with how it stands. */
export interface JobRecord extends Job {
  readonly status: 'open' | 'done' | 'cancelled';
}

/** One more entry in a job's history: setting it again replaces its lines; a closed job must be set again to reopen. */
export function evolveJob(job: JobRecord | undefined, entry: Entry): Result<JobRecord, Refusal> {
  if (entry.kind === 'job-set') {
    const numbers = new Set(entry.payload.lines.map((line) => line.lineNo));
    if (numbers.size !== entry.payload.lines.length)
      return refuse('lines', `Job ${entry.subjectId} has the same line number twice.`);
    return ok({ ...entry.payload, status: 'open' });
  }
  if (job === undefined) return refuse('unknown-job', `No job ${entry.subjectId} is in the record.`);
  if (entry.kind !== 'job-closed') return refuse('kind', `An entry "${entry.kind}" cannot be about a job.`);
  if (job.status !== 'open') return refuse('closed', `Job ${job.id} is already ${job.status}.`);
  return ok({ ...job, status: entry.payload.how });
}
