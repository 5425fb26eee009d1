import { cleanLine } from '../../db/commands/clean-line';
import { type Act, act } from './act';
import type { Calendar } from './calendar';
import type { DemoJob } from './jobs';
import { actorOf } from './people';

/** The job of month 6 that was for oxygen service. */
export function isOxygenJob(job: Pick<DemoJob, 'monthsAgo' | 'connectionId'>): boolean {
  return job.monthsAgo === 6 && job.connectionId === '9-16-high';
}

/** Its cleaning, written down by quality before the job could be closed. */
export function cleaning(job: DemoJob, offset: number, calendar: Calendar): Act {
  const when = { atMs: calendar.at(offset, 1020), by: actorOf('quality-1'), name: `clean ${job.id}` };
  const record = {
    lineNo: 1,
    procedure: 'TR-CL-04 rev 2, oxygen cleaning',
    onDay: calendar.day(offset),
    evidence: 'Wiped and ultraviolet checked by Quality-1; record TR-CL-04/17 in the quality office',
  };
  return act(when, 'plan-job', (db, permit, entered, env) =>
    cleanLine(db, permit, { ...entered, jobId: job.id, ...record }, env),
  );
}
