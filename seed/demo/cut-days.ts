import { invariant } from '../../lib/invariant';
import type { Chance } from '../random';
import { monthDay } from './calendar';
import type { DemoJob } from './jobs';
import { type PersonId, techniciansIn } from './people';
import { isWrongDieRow } from './wrong-die';

/** One row of work: so many ends of one job with one die, on one half of one day. */
export interface CutDay {
  readonly job: DemoJob;
  readonly dieId: string;
  readonly tech: PersonId;
  readonly bench: string;
  /** Days from today, below zero. */
  readonly offset: number;
  /** 0: morning, 1: afternoon. */
  readonly slot: number;
  readonly ends: number;
  readonly goodEnds: number;
}

const ROW_ENDS_MAX = 14;
const DAYS_USED = 29;

/**
 * Spreads the jobs of each month and tube size over its days, one after another, and each job over rows of a morning's
 * or an afternoon's work. Ends refused and made again are dealt out among the job's rows.
 */
export function cutDays(jobs: readonly DemoJob[], chance: Chance): CutDay[] {
  return groupsOf(jobs).flatMap((group) => {
    const rows = group.map((job) => splitRows(job));
    const halves = rows.reduce((sum, list) => sum + list.length, 0);
    invariant(halves <= DAYS_USED * 2, 'a month has room for the work of one tube size');
    const room = DAYS_USED * 2 - halves;
    let half = 0;
    return group.flatMap((job, index) => {
      half += chance.int(0, Math.floor(room / group.length));
      const days = dealRemakes(job, rows[index] ?? [], chance).map((row, at) => place(job, row, half + at));
      half += days.length;
      const tech = chance.pick(techniciansIn(job.monthsAgo));
      const bench = chance.pick(['B1', 'B2', 'B3', 'P1']);
      return days.map((day) => ({ ...day, tech, bench }));
    });
  });
}

/** Jobs of one month and tube size: they share dies, so they come one after another. */
function groupsOf(jobs: readonly DemoJob[]): DemoJob[][] {
  const groups = new Map<string, DemoJob[]>();
  for (const job of jobs) {
    const key = `${job.monthsAgo} ${sizeOf(job)}`;
    groups.set(key, [...(groups.get(key) ?? []), job]);
  }
  return [...groups.values()];
}

interface Row {
  readonly dieId: string;
  readonly ends: number;
}

/** A job's rows: each die's share in about equal parts of a half day; the wrongly logged row stays whole. */
function splitRows(job: DemoJob): Row[] {
  return job.dies.flatMap(([dieId, ends]) => {
    const count = isWrongDieRow({ job, dieId, ends }) ? 1 : Math.ceil(ends / ROW_ENDS_MAX);
    return Array.from({ length: count }, (_, at) => ({
      dieId,
      ends: Math.floor((ends * (at + 1)) / count) - Math.floor((ends * at) / count),
    }));
  });
}

function dealRemakes(job: DemoJob, rows: readonly Row[], chance: Chance): (Row & { goodEnds: number })[] {
  const bad = rows.map(() => 0);
  for (let remake = 0; remake < job.remakes; remake++) {
    const free = rows.flatMap((row, at) => ((bad[at] ?? 0) < row.ends ? [at] : []));
    const at = chance.pick(free);
    bad[at] = (bad[at] ?? 0) + 1;
  }
  return rows.map((row, at) => ({ ...row, goodEnds: row.ends - (bad[at] ?? 0) }));
}

function place(job: DemoJob, row: Row & { goodEnds: number }, half: number) {
  return { job, ...row, offset: monthDay(job.monthsAgo, Math.floor(half / 2)), slot: half % 2 };
}

function sizeOf({ connectionId }: DemoJob): string {
  return connectionId.replace(/-(medium|high)$/, '');
}
