import type { JobLog } from '../../lib/outlook/line-predictions';
import { type EntryRow, entryOfRow } from '../ledger/entry-row';
import { statement } from '../ledger/statements';
import type { Db } from '../open';

const STANDING = (subjectKind: 'job' | 'order', kinds: string) =>
  `SELECT e.* FROM entry e WHERE e.subject_kind = '${subjectKind}' AND e.kind IN (${kinds})
    AND NOT EXISTS (SELECT 1 FROM entry r WHERE r.reverses_id = e.id) ORDER BY e.subject_id, e.seq`;
const JOB_LOG = STANDING('job', `'job-set', 'job-closed'`);
const ORDER_LOG = STANDING('order', `'order-placed'`);

/** The standing plans and closings of every job, job by job, in order. */
export function listJobLogs(db: Db): JobLog[] {
  const logs = new Map<string, { jobId: string; entries: ReturnType<typeof entryOfRow>[] }>();
  for (const row of statement(db.$client, JOB_LOG).all() as EntryRow[]) {
    const log = logs.get(row.subject_id) ?? { jobId: row.subject_id, entries: [] };
    logs.set(row.subject_id, log);
    log.entries.push(entryOfRow(row));
  }
  return [...logs.values()];
}

/** When each order was first placed, epoch ms. */
export function listOrdersPlaced(db: Db): Map<string, number> {
  const placed = new Map<string, number>();
  for (const row of statement(db.$client, ORDER_LOG).all() as EntryRow[])
    if (!placed.has(row.subject_id)) placed.set(row.subject_id, row.server_at_ms);
  return placed;
}
