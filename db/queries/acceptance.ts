import { asc, eq, inArray } from 'drizzle-orm';
import { type LineStanding, lineStanding, type SuspectFacts } from '../../lib/acceptance/line-standing';
import type { AcceptanceRecord } from '../../lib/ledger/acceptance-history';
import { statement } from '../ledger/statements';
import type { Db } from '../open';
import { acceptance } from '../schema';

/** The looks at ends of one line, in the order in which they were entered. */
export function listAcceptances(db: Db, jobLineId: string): AcceptanceRecord[] {
  return db
    .select()
    .from(acceptance)
    .where(eq(acceptance.jobLineId, jobLineId))
    .orderBy(asc(acceptance.recordedAtMs), asc(acceptance.id))
    .all()
    .map(({ data }) => data);
}

/** One look by its ID. */
export function findAcceptance(db: Db, id: string): AcceptanceRecord | undefined {
  return db.select().from(acceptance).where(eq(acceptance.id, id)).get()?.data;
}

/** Several looks by their IDs; those taken back are left out. */
export function findAcceptances(db: Db, ids: readonly string[]): Map<string, AcceptanceRecord> {
  const found = new Map<string, AcceptanceRecord>();
  for (let at = 0; at < ids.length; at += CHUNK) {
    const rows = db
      .select()
      .from(acceptance)
      .where(inArray(acceptance.id, ids.slice(at, at + CHUNK)))
      .all();
    for (const { id, data } of rows) found.set(id, data);
  }
  return found;
}

/** SQLite takes so many parameters without asking twice. */
const CHUNK = 500;

const SUSPECTS = `SELECT s.acceptance_id AS acceptanceId, s.recall_id AS recallId, s.open_ends AS openEnds,
    s.gone_ends AS goneEnds
  FROM recall_suspect s JOIN acceptance a ON a.id = s.acceptance_id WHERE a.job_line_id = ?`;

/** How it stands with the ends of one line: accepted, releasable, refused, and which are held and why. */
export function findLineStanding(db: Db, jobLineId: string): LineStanding {
  const suspects = statement(db.$client, SUSPECTS).all(jobLineId) as SuspectFacts[];
  return lineStanding(listAcceptances(db, jobLineId), suspects);
}

/** The number after the highest that an end of the line bears. */
export function nextEndNo(db: Db, jobLineId: string): number {
  const last = statement(
    db.$client,
    `SELECT MAX(first_end_no + end_count) AS next FROM acceptance
     WHERE job_line_id = ? AND decision = 'accepted' AND regauges_id IS NULL`,
  ).get(jobLineId) as { next: number | null };
  return last.next ?? 1;
}

/** Accepted and releasable ends of every line of the open jobs on which ends were looked at. */
export function acceptedByLine(db: Db): Map<string, LineStanding> {
  const lines = statement(
    db.$client,
    `SELECT DISTINCT a.job_line_id AS id FROM acceptance a JOIN job_line l ON l.id = a.job_line_id
     JOIN job j ON j.id = l.job_id WHERE j.status = 'open'`,
  ).all() as { id: string }[];
  return new Map(lines.map(({ id }) => [id, findLineStanding(db, id)]));
}
