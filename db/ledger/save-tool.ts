import type { Database } from 'better-sqlite3';
import type { EdgeRecord, ToolRecord } from '../../lib/ledger/tool-record';
import { toolKey } from '../../lib/shop/tool-id';
import { saveGauge } from './save-gauge';
import { bit, clear, insert, upsert } from './statements';

/** A tool, its edges and what each has cut. */
export function saveTool(client: Database, id: string, tool: ToolRecord): void {
  clear(client, 'edge_use', 'tool_id', id);
  clear(client, 'edge', 'tool_id', id);
  upsert(client, 'tool', 'id', toolRow(tool));
  for (const edge of tool.edges) saveEdge(client, id, edge);
  saveGauge(client, id, tool);
}

function toolRow(tool: ToolRecord) {
  return {
    id: tool.id,
    look_up_key: toolKey(tool.id),
    part_id: tool.partId,
    role: tool.role,
    hand: tool.hand,
    lot: tool.lot,
    received_on_day: tool.receivedOnDay,
    opening: JSON.stringify(tool.opening),
    state: tool.state,
    state_since_ms: tool.stateSinceMs,
    state_reason: tool.stateReason,
    holder_id: tool.holderId,
    job_line_id: tool.jobLineId,
    bench: tool.bench,
    back_on_day: tool.backOnDay,
    due_on_day: tool.dueOnDay,
    expires_on_day: tool.expiresOnDay,
    opened_on_day: tool.openedOnDay,
    level_ml: tool.levelMl,
    extended_until_day: tool.extendedUntilDay,
    drops_per_ml: tool.dropsPerMl,
    disposal: tool.disposal === null ? null : JSON.stringify(tool.disposal),
    kit_id: tool.kitId,
    reservation: tool.reservation === null ? null : JSON.stringify(tool.reservation),
    pieces: tool.pieces,
    adjustments: tool.adjustments,
    first_off_owed: bit(tool.firstOffOwed),
  };
}

function saveEdge(client: Database, toolId: string, edge: EdgeRecord): void {
  const key = { tool_id: toolId, edge_no: edge.edgeNo };
  const { end, cause, endedAtMs } = edge;
  const lastUse = edge.lastUse === null ? null : JSON.stringify(edge.lastUse);
  const readings = JSON.stringify(edge.readings);
  insert(client, 'edge', { ...key, end, cause, ended_at_ms: endedAtMs, last_use: lastUse, readings });
  for (const use of edge.use) {
    insert(client, 'edge_use', {
      ...key,
      connection_id: use.connectionId,
      material_id: use.materialId,
      dry: bit(use.dry),
      rework: bit(use.rework),
      ends: use.ends,
      good_ends: use.goodEnds,
      exposure_micro: use.exposureMicro,
    });
  }
}
