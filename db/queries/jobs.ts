import { eq } from 'drizzle-orm';
import type { AcceptanceRule } from '../../lib/shop/acceptance-rule';
import type { Duty } from '../../lib/shop/duty';
import type { Operation } from '../../lib/shop/vocabulary';
import { statement } from '../ledger/statements';
import type { Db } from '../open';
import { job } from '../schema';

/** A job line with how far it has come: good cones and good threads logged against it. */
export interface LineRow {
  readonly id: string;
  readonly jobId: string;
  readonly jobTitle: string;
  readonly jobStatus: 'open' | 'done' | 'cancelled';
  readonly lineNo: number;
  readonly connectionId: string;
  readonly materialId: string;
  readonly heat: string;
  readonly ends: number;
  readonly operations: readonly Operation[];
  readonly startOnDay: string;
  readonly dueOnDay: string;
  readonly value: 'ordinary' | 'precious';
  readonly duty?: Duty;
  /** The day of the cleaning written down for it; null where none is. */
  readonly cleanedOnDay?: string | null;
  readonly goodCones: number;
  readonly goodThreads: number;
}

interface RawLine extends Omit<LineRow, 'operations'> {
  readonly cone: 0 | 1;
  readonly thread: 0 | 1;
  readonly assemble: 0 | 1;
}

const LINES = `SELECT l.id, l.job_id AS jobId, j.title AS jobTitle, j.status AS jobStatus, l.line_no AS lineNo,
    l.connection_id AS connectionId, l.material_id AS materialId, l.heat, l.ends, l.cone, l.thread, l.assemble,
    l.start_on_day AS startOnDay, l.due_on_day AS dueOnDay, l.value, l.duty,
    json_extract(l.cleaning, '$.onDay') AS cleanedOnDay,
    COALESCE((SELECT SUM(good_ends) FROM cut c WHERE c.job_line_id = l.id AND c.operation = 'cone' AND c.reversed = 0), 0) AS goodCones,
    COALESCE((SELECT SUM(good_ends) FROM cut c WHERE c.job_line_id = l.id AND c.operation = 'thread' AND c.reversed = 0), 0) AS goodThreads
  FROM job_line l JOIN job j ON j.id = l.job_id`;

/** The lines of all open jobs, in start order: the plan. */
export function listOpenLines(db: Db): LineRow[] {
  const sql = `${LINES} WHERE j.status = 'open' ORDER BY l.start_on_day, l.due_on_day, l.id`;
  return (statement(db.$client, sql).all() as RawLine[]).map(lineOf);
}

/** The lines of one job, whatever its status. */
export function listLinesOfJob(db: Db, jobId: string): LineRow[] {
  const sql = `${LINES} WHERE l.job_id = ? ORDER BY l.line_no`;
  return (statement(db.$client, sql).all(jobId) as RawLine[]).map(lineOf);
}

/** One line by its ID. */
export function findLine(db: Db, lineId: string): LineRow | undefined {
  const raw = statement(db.$client, `${LINES} WHERE l.id = ?`).get(lineId) as RawLine | undefined;
  return raw && lineOf(raw);
}

/** A job without its lines. */
export interface JobRow {
  readonly id: string;
  readonly title: string;
  readonly status: LineRow['jobStatus'];
  /** The rule its ends must meet, where it has one of its own. */
  readonly acceptanceRule?: AcceptanceRule;
  /** The day it left the house; absent while it is here. */
  readonly shippedOnDay?: string;
}

/** One job with how it stands, whatever its status. */
export function findJob(db: Db, jobId: string): JobRow | undefined {
  const row = db.select().from(job).where(eq(job.id, jobId)).get();
  if (row === undefined) return undefined;
  const { acceptanceRule, shippedOnDay, ...plain } = row;
  return {
    ...plain,
    ...(acceptanceRule === null ? {} : { acceptanceRule }),
    ...(shippedOnDay === null ? {} : { shippedOnDay }),
  };
}

/** Ends of every line of every job, open or closed. */
export function listLineEnds(db: Db): Map<string, number> {
  const rows = statement(db.$client, 'SELECT id, ends FROM job_line').all() as { id: string; ends: number }[];
  return new Map(rows.map(({ id, ends }) => [id, ends]));
}

/** Jobs that are closed, the last one closed first. */
export function listClosedJobs(db: Db, limit = 50): { id: string; title: string; status: string }[] {
  const sql = `SELECT id, title, status FROM job WHERE status <> 'open' ORDER BY
      (SELECT MAX(seq) FROM entry e WHERE e.subject_kind = 'job' AND e.subject_id = job.id) DESC LIMIT ?`;
  return statement(db.$client, sql).all(limit) as { id: string; title: string; status: string }[];
}

function lineOf({ cone, thread, assemble, ...line }: RawLine): LineRow {
  const done: [Operation, 0 | 1][] = [
    ['cone', cone],
    ['thread', thread],
    ['assemble', assemble],
  ];
  return { ...line, operations: done.filter(([, yes]) => yes === 1).map(([operation]) => operation) };
}
