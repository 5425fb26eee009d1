import type { Database } from 'better-sqlite3';
import type { ToolRecord } from '../../lib/ledger/tool-record';
import { bit, clear, insert } from './statements';

/** A gauge's evidence, interval and standing knock. */
export function saveGauge(client: Database, id: string, tool: ToolRecord): void {
  clear(client, 'gauge_evidence', 'tool_id', id);
  clear(client, 'gauge', 'tool_id', id);
  tool.evidence.forEach((one, at) => {
    insert(client, 'gauge_evidence', {
      ...{ tool_id: id, no: at + 1, entry_id: one.entryId, kind: one.kind, on_day: one.onDay },
      ...{ at_ms: one.atMs, as_found: one.asFound, as_left: one.asLeft, qualifies: bit(one.qualifies) },
      against_tool_id: one.againstToolId,
      calibration: one.calibration === null ? null : JSON.stringify(one.calibration),
      file: one.file === null ? null : JSON.stringify(one.file),
    });
  });
  const { interval, dropped } = tool;
  if (interval === null && dropped === null) return;
  insert(client, 'gauge', {
    tool_id: id,
    interval_days: interval?.intervalDays ?? null,
    interval_ends: interval?.intervalEnds ?? null,
    interval_method: interval?.method ?? null,
    dropped_on_day: dropped?.onDay ?? null,
    dropped_at_ms: dropped?.atMs ?? null,
  });
}
