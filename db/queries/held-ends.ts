import { statement } from '../ledger/statements';
import type { Db } from '../open';
import { findLineStanding } from './acceptance';

/** A line with accepted ends that cannot be released as they are. */
export interface HeldLine {
  readonly jobLineId: string;
  readonly ends: number;
}

/** Lines of jobs not yet shipped on which ends are held: no gauge recorded, or a recall open on them. */
export function linesWithHeldEnds(db: Db): HeldLine[] {
  const lines = statement(
    db.$client,
    `SELECT DISTINCT a.job_line_id AS id FROM acceptance a JOIN job_line l ON l.id = a.job_line_id
     JOIN job j ON j.id = l.job_id
     WHERE j.shipped_on_day IS NULL AND a.decision = 'accepted' AND (a.gauges_complete = 0 OR EXISTS (
       SELECT 1 FROM recall_suspect s WHERE s.acceptance_id = a.id AND s.open_ends > 0))
     ORDER BY a.job_line_id`,
  ).all() as { id: string }[];
  return lines.flatMap(({ id }) => {
    const ends = findLineStanding(db, id).held.reduce((sum, held) => sum + held.ends, 0);
    return ends === 0 ? [] : [{ jobLineId: id, ends }];
  });
}
