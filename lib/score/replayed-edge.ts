import { invariant } from '../invariant';
import type { EdgeHistory, ExposurePart } from '../life/observation';
import type { WornReading } from '../reading/reading';
import type { EdgeBegan, EdgeEnded, EdgeName, LogEvent, RowCut } from './log-event';

/** One edge as far as the replay has come. */
export interface ReplayedEdge {
  readonly began: EdgeBegan;
  readonly rows: RowCut[];
  readonly readings: WornReading[];
  ended: EdgeEnded | null;
}

export function edgeKey({ toolId, edgeNo }: EdgeName): string {
  return `${edgeNo}:${toolId}`;
}

/** Adds one event to what is known. Errors: throws when it is about an edge that never began (a bug in the log). */
export function replay(edges: Map<string, ReplayedEdge>, event: LogEvent): ReplayedEdge {
  const key = edgeKey(event);
  if (event.type === 'began') {
    const begun = { began: event, rows: [], readings: [], ended: null };
    edges.set(key, begun);
    return begun;
  }
  const edge = edges.get(key);
  invariant(edge !== undefined, `edge ${event.edgeNo} of ${event.toolId} was used before it began`);
  if (event.type === 'cut') edge.rows.push(event);
  else if (event.type === 'ended') edge.ended = event;
  else edge.readings.push({ worn: event.worn, sd: event.sd, exposure: edge.rows.map((row) => partOf(row)) });
  return edge;
}

/** All that the edge has cut. */
export function exposureOf(edge: ReplayedEdge): ExposurePart[] {
  return edge.rows.map((row) => partOf(row));
}

/** The edge as evidence on how long edges last: found worn, it wore out within the last row's ends that were not good. */
export function historyOf(edge: ReplayedEdge): EdgeHistory {
  const { toolId, edgeNo, kind, partId, odIn, regrinds } = edge.began;
  const how = edge.ended?.how ?? 'in-service';
  const end: EdgeHistory['end'] = how === 'lost' ? 'removed-working' : how;
  const entered = enteredWith(edge);
  const name = { toolId, edgeNo, kind, partId, odIn, regrinds, end, ...(entered && { entered }) };
  const last = edge.rows.at(-1);
  if (end !== 'worn' || last === undefined) return { ...name, before: exposureOf(edge), during: [] };
  const doubtful = Math.max(1, last.ends - last.goodEnds) / last.ends;
  const before = [...edge.rows.slice(0, -1).map((row) => partOf(row)), partOf(last, 1 - doubtful)];
  return { ...name, before, during: [partOf(last, doubtful)] };
}

/** What it had cut when the log began to follow it; one that ended without a row since was entered as a finished life. */
function enteredWith({ rows, ended }: ReplayedEdge): ExposurePart[] | undefined {
  const opening = rows.filter((row) => row.opening === true).map((row) => partOf(row));
  return opening.length === 0 || (ended !== null && opening.length === rows.length) ? undefined : opening;
}

function partOf({ materialId, dry, rework, ends, exposurePerEnd }: RowCut, share = 1): ExposurePart {
  return { materialId, dry, rework, base: ends * exposurePerEnd * share };
}
