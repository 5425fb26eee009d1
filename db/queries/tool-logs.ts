import type { ToolLog } from '../../lib/outlook/stored-predictions';
import { type EntryRow, entryOfRow, standingEntries } from '../ledger/entry-row';
import { statement } from '../ledger/statements';
import type { Db } from '../open';
import { findTool } from './tools';

const EDGE_LOG = `SELECT e.*, t.part_id AS part_id FROM entry e JOIN tool t ON t.id = e.subject_id
  WHERE e.subject_kind = 'tool' AND t.role IN ('die', 'blade') AND e.kind <> 'entry-reversed'
    AND NOT EXISTS (SELECT 1 FROM entry r WHERE r.reverses_id = e.id)
  ORDER BY e.subject_id, e.seq`;

/** The standing entries of every tool with an edge, tool by tool, in order. */
export function listToolLogs(db: Db): ToolLog[] {
  const logs = new Map<
    string,
    { toolId: string; partId: string; entries: ReturnType<typeof entryOfRow>[] }
  >();
  for (const row of statement(db.$client, EDGE_LOG).iterate() as IterableIterator<
    EntryRow & { part_id: string }
  >) {
    const log = logs.get(row.subject_id);
    if (log === undefined) {
      logs.set(row.subject_id, { toolId: row.subject_id, partId: row.part_id, entries: [entryOfRow(row)] });
    } else log.entries.push(entryOfRow(row));
  }
  return [...logs.values()];
}

/** The standing entries of one tool, in order; undefined where there is no such tool. */
export function findToolLog(db: Db, typedId: string): ToolLog | undefined {
  const tool = findTool(db, typedId);
  if (tool === undefined) return undefined;
  return { toolId: tool.id, partId: tool.partId, entries: standingEntries(db.$client, 'tool', tool.id) };
}
