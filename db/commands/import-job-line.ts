import { statement } from '../ledger/statements';
import type { Db } from '../open';

/**
 * Finds the job line that a cuts file means by a job: the line itself where it is written out, or the one line of that
 * job with this connection and material. Undefined where the record cannot tell.
 */
export function jobLineFinder(
  db: Db,
): (job: string, connectionId: string, materialId: string) => string | undefined {
  const sql = 'SELECT id, job_id, connection_id, material_id FROM job_line ORDER BY job_id, line_no';
  const rows = statement(db.$client, sql).all() as LineRow[];
  const lineIds = new Set(rows.map((row) => row.id));
  const byWork = new Map<string, string | null>();
  for (const row of rows) {
    const key = workKey(row.job_id, row.connection_id, row.material_id);
    byWork.set(key, byWork.has(key) ? null : row.id);
  }
  return (job, connectionId, materialId) =>
    lineIds.has(job) ? job : (byWork.get(workKey(job, connectionId, materialId)) ?? undefined);
}

interface LineRow {
  readonly id: string;
  readonly job_id: string;
  readonly connection_id: string;
  readonly material_id: string;
}

function workKey(jobId: string, connectionId: string, materialId: string): string {
  return `${jobId} ${connectionId} ${materialId}`;
}
