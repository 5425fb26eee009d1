import type { EdgeEnded, LogEvent, RowCut } from '../score/log-event';
import type { EdgeKind } from '../shop/vocabulary';

/** One edge of the log from its first row to its end, where it has ended. */
export interface WholeEdge {
  readonly toolId: string;
  readonly edgeNo: number;
  readonly partId: string;
  readonly kind: EdgeKind;
  readonly rows: readonly RowCut[];
  readonly ended: EdgeEnded | null;
}

/** The edges of a log whose whole use is known, in the order in which they came into use; those that cut nothing left out. */
export function wholeEdges(events: readonly LogEvent[]): WholeEdge[] {
  const edges = new Map<string, WholeEdge & { rows: RowCut[]; ended: EdgeEnded | null }>();
  for (const event of events) {
    const key = `${event.edgeNo}:${event.toolId}`;
    const edge = edges.get(key);
    if (event.type === 'began') {
      const { toolId, edgeNo, partId, kind } = event;
      if (event.startKnown) edges.set(key, { toolId, edgeNo, partId, kind, rows: [], ended: null });
    } else if (event.type === 'cut') edge?.rows.push(event);
    else if (event.type === 'ended' && edge !== undefined) edge.ended = event;
  }
  return [...edges.values()].filter(({ rows }) => rows.length > 0);
}
