import { closeJob, planJob } from '../../db/commands/plan-job';
import type { Db } from '../../db/open';
import type { Job, JobLine } from '../../lib/shop/job';
import { jobLineId } from '../../lib/shop/job-line-id';
import type { RejectCause } from '../../lib/shop/vocabulary';
import type { Chance } from '../random';
import { type Act, act } from './act';
import type { BladeBench } from './blade-bench';
import type { Calendar } from './calendar';
import { cut, giveBack, issue } from './crib-acts';
import { type CutDay, cutDays } from './cut-days';
import type { DieUse } from './die-acts';
import { DIES } from './dies';
import { canOn } from './fluids';
import { type DemoJob, JOBS } from './jobs';
import { cleaning, isOxygenJob } from './oxygen-job';
import { actorOf } from './people';
import { saidOfJob } from './said';
import { isWrongDieRow, wrongDieActs } from './wrong-die';

/** A row of work with what became of it. */
export interface CutRow extends CutDay {
  readonly rejects: { cause: RejectCause; count: number }[];
  readonly threadAtMs: number;
}

/** From this month on, every die and blade is seen to go out and come back. */
const ISSUES_SINCE_MONTH = 2;

/** From this month on, what was said is kept with what was done. */
const SAID_SINCE_MONTH = 3;

/** The closed jobs of the story as acts: planned, coned, threaded, closed; and when each die was first and last used. */
export function cutJobs(
  calendar: Calendar,
  chance: Chance,
  bench: BladeBench,
): { readonly acts: readonly Act[]; readonly use: DieUse; readonly rows: readonly CutRow[] } {
  const days = cutDays(JOBS, chance);
  const inOrder = [...days].sort((a, b) => a.offset - b.offset || a.slot - b.slot);
  const use = spanOfDies(inOrder, calendar);
  const retired = new Map(DIES.map(({ id, endsInMonth }) => [id, endsInMonth !== null]));
  const jobs = JOBS.flatMap((job) =>
    jobActs(
      job,
      days.filter((row) => row.job === job),
      calendar,
    ),
  );
  const cutRows = inOrder.map((day) => ({
    ...day,
    rejects: rejectsOf(day, chance),
    threadAtMs: threadMs(day, calendar),
  }));
  const rows = cutRows.flatMap((day) => {
    const isLast = retired.get(day.dieId) === true && use.get(day.dieId)?.lastMs === threadMs(day, calendar);
    return rowActs({ ...day, isLast }, calendar, bench);
  });
  return { acts: [...jobs, ...rows], use, rows: cutRows };
}

function spanOfDies(inOrder: readonly CutDay[], calendar: Calendar): DieUse {
  const use = new Map<string, { firstMs: number; lastMs: number }>();
  for (const day of inOrder) {
    const atMs = threadMs(day, calendar);
    use.set(day.dieId, { firstMs: use.get(day.dieId)?.firstMs ?? atMs, lastMs: atMs });
  }
  return use;
}

function jobActs(job: DemoJob, days: readonly CutDay[], calendar: Calendar): Act[] {
  const offsets = days.map(({ offset }) => offset);
  const [first, last] = [Math.min(...offsets), Math.max(...offsets)];
  const lead = actorOf('lead-1');
  const line = {
    lineNo: 1,
    connectionId: job.connectionId,
    materialId: job.materialId,
    heat: job.heat,
    ends: job.ends,
    operations: ['cone' as const, 'thread' as const],
    startOnDay: calendar.day(first),
    dueOnDay: calendar.day(last + 2),
    value: 'ordinary' as const,
    ...(isOxygenJob(job) ? { duty: 'oxygen' as const } : {}),
  };
  const cleaned = isOxygenJob(job) ? [cleaning(job, last, calendar)] : [];
  return [
    ...cleaned,
    act(
      { atMs: calendar.at(first - 6, 600), by: lead, name: `plan ${job.id}` },
      'plan-job',
      (db, permit, entered, env) =>
        planJob(db, permit, { ...entered, job: withSaid(db, env.nowMs, job, [line]) }, env),
    ),
    act(
      { atMs: calendar.at(last, 1050), by: lead, name: `close ${job.id}` },
      'plan-job',
      (db, permit, entered, env) => closeJob(db, permit, { ...entered, jobId: job.id, how: 'done' }, env),
    ),
  ];
}

/** The job as it was entered: of late with what the plan said of it. */
function withSaid(db: Db, nowMs: number, { id, title, monthsAgo }: DemoJob, lines: JobLine[]): Job {
  const planned = { id, title, lines };
  return monthsAgo > SAID_SINCE_MONTH ? planned : { ...planned, shown: saidOfJob(db, nowMs, planned) };
}

/** One row of threads, the cones before it, and the die's and blades' way over the counter. */
function rowActs(day: CutRow & { isLast: boolean }, calendar: Calendar, bench: BladeBench): Act[] {
  const { job, dieId, tech, offset, rejects } = day;
  const lineId = jobLineId(job.id, 1);
  const mark = `${job.id} ${offset} ${day.slot}`;
  const row = {
    connectionId: job.connectionId,
    materialId: job.materialId,
    heat: job.heat,
    jobLineId: lineId,
    fluidId: isOxygenJob(job) ? null : canOn(offset, job.materialId),
  };
  const seen = job.monthsAgo <= ISSUES_SINCE_MONTH;
  const atMs = threadMs(day, calendar);
  bench.cone({ ...row, ends: day.ends, offset, minutes: morning(day), tech, mark, seen });
  if (isWrongDieRow(day)) return wrongDieActs(day, atMs, row);
  const threads = cut(
    { atMs, by: tech, toolId: dieId, mark },
    { ...row, ends: day.ends, goodEnds: day.goodEnds, rejects },
  );
  if (!seen) return [threads];
  const out = calendar.at(offset, morning(day) - 25);
  const back = calendar.at(offset, morning(day) + 170);
  return [
    issue({ atMs: out, by: 'crib-1', toolId: dieId, mark }, tech, lineId, day.bench),
    threads,
    giveBack({ atMs: back, by: 'crib-1', toolId: dieId, mark }, day.isLast ? 'dull' : 'ok'),
  ];
}

/** Minutes after midnight at which the work on a row begins: mornings from 7, afternoons from 12. */
function morning({ slot }: CutDay): number {
  return 450 + slot * 240;
}

function threadMs(day: CutDay, calendar: Calendar): number {
  return calendar.at(day.offset, morning(day) + 150);
}

const CAUSES: readonly RejectCause[] = [
  'torn-thread',
  'go-tight',
  'crooked',
  'nicked',
  'length',
  'torn-thread',
];

function rejectsOf({ ends, goodEnds, job }: CutDay, chance: Chance) {
  if (ends === goodEnds) return [];
  const cause: RejectCause = job.materialId === '625' ? 'torn-thread' : chance.pick(CAUSES);
  return [{ cause, count: ends - goodEnds }];
}
