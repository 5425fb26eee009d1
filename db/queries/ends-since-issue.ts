import { statement } from '../ledger/statements';
import type { Db } from '../open';

/** Ends that a tool has cut on one line since it was last issued. */
export interface EndsSinceIssue {
  readonly jobLineId: string | null;
  readonly connectionId: string;
  readonly heat: string;
  /** Ends cut by the log. */
  readonly cutEnds: number;
  /** Ends accepted with this tool named on them. */
  readonly acceptedEnds: number;
}

const ISSUED = `SELECT MAX(e.server_at_ms) AS atMs FROM entry e
  WHERE e.subject_kind = 'tool' AND e.subject_id = ? AND e.kind = 'tool-issued'
    AND NOT EXISTS (SELECT 1 FROM entry r WHERE r.reverses_id = e.id)`;

const CUT = `SELECT job_line_id AS jobLineId, connection_id AS connectionId, heat, SUM(ends) AS cutEnds
  FROM cut WHERE tool_id = ? AND reversed = 0 AND cut_at_ms >= ?
  GROUP BY job_line_id, connection_id, heat ORDER BY job_line_id, heat`;

const ACCEPTED = `SELECT COALESCE(SUM(end_count), 0) AS ends FROM acceptance
  WHERE decision = 'accepted' AND regauges_id IS NULL AND gauged_at_ms >= ? AND job_line_id IS ? AND heat = ?
    AND ? IN (data ->> 'dieId', data ->> 'bladeId')`;

/**
 * What a tool has cut since it was last issued, line by line: what is gauged again when it turns out to be the wrong one, such
 * as a right-hand die in a left-hand place. A tool that was never issued: everything that it has cut.
 */
export function endsSinceIssue(
  db: Db,
  toolId: string,
): { readonly issuedAtMs: number | null; readonly lines: readonly EndsSinceIssue[] } {
  const { atMs } = statement(db.$client, ISSUED).get(toolId) as { atMs: number | null };
  const since = atMs ?? 0;
  const rows = statement(db.$client, CUT).all(toolId, since) as Omit<EndsSinceIssue, 'acceptedEnds'>[];
  const lines = rows.map((row) => {
    const accepted = statement(db.$client, ACCEPTED).get(since, row.jobLineId, row.heat, toolId) as {
      ends: number;
    };
    return { ...row, acceptedEnds: accepted.ends };
  });
  return { issuedAtMs: atMs, lines };
}
