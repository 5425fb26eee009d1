import type { CutOperation } from '../../lib/shop/vocabulary';
import { statement } from '../ledger/statements';
import type { Db } from '../open';

/** The tool that was last logged as cutting on a line. */
export function lastEdgeTool(db: Db, jobLineId: string, operation: CutOperation): string | undefined {
  const sql = `SELECT tool_id AS id FROM cut WHERE job_line_id = ? AND operation = ? AND reversed = 0
    ORDER BY seq DESC LIMIT 1`;
  return (statement(db.$client, sql).get(jobLineId, operation) as { id: string } | undefined)?.id;
}

/** The bottle that was last named on the line’s rows of the cut log. */
export function lastBottle(db: Db, jobLineId: string): string | undefined {
  const sql = `SELECT fluid_id AS id FROM cut WHERE job_line_id = ? AND fluid_id IS NOT NULL AND reversed = 0
    ORDER BY seq DESC LIMIT 1`;
  return (statement(db.$client, sql).get(jobLineId) as { id: string } | undefined)?.id;
}
