import { TOOL_STATE_LABEL, type ToolState } from '../../shop/vocabulary';
import type { Entry } from '../event';
import { currentEdge, type EdgeRecord, type ToolRecord } from '../tool-record';

/** The tool in a new state from this entry on: whoever held it, where it lay, and a knock are over. */
export function placed(tool: ToolRecord, state: ToolState, entry: Entry): ToolRecord {
  const { id: stateEntryId, serverAtMs: stateSinceMs, reason: stateReason } = entry;
  const at = { state, stateSinceMs, stateReason, stateEntryId };
  const held = { holderId: null, jobLineId: null, bench: '', backOnDay: null, kitId: null };
  return { ...tool, ...at, ...held, dropped: null };
}

/** Where the tool stands, in shop words: "in the crib", "out for regrind". */
export function standing(tool: ToolRecord): string {
  return TOOL_STATE_LABEL[tool.state];
}

/** The tool with its edge in service replaced. */
export function withEdge(tool: ToolRecord, edge: EdgeRecord): ToolRecord {
  return { ...tool, edges: [...tool.edges.slice(0, -1), edge] };
}

/** True for a blade or die whose last edge was taken out of service. */
export function edgeEnded(tool: ToolRecord): boolean {
  const edge = currentEdge(tool);
  return edge !== undefined && edge.end !== null;
}
