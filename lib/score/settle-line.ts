import type { CutOperation } from '../shop/vocabulary';
import type { Settlement } from './prediction';

/** One row cut for a line since something was said of it. */
export interface LineRowCut {
  readonly atMs: number;
  readonly operation: CutOperation;
  readonly goodEnds: number;
  /** The edge was neither in the shop nor on order when it was said. */
  readonly furtherEdge: boolean;
  /** The edge wore out in this row. */
  readonly woreOut: boolean;
}

/** What the record says of a line since something was said of it, in order. */
export interface LineSince {
  readonly rows: readonly LineRowCut[];
  /** Good ends that each operation still lacked when it was said; absent: none of that operation. */
  readonly lacking: Readonly<Partial<Record<CutOperation, number>>>;
  /** The job was closed, or the line became another one (size, material, ends): nothing more can be learnt. */
  readonly ended: { readonly how: 'closed-short' | 'cancelled' | 'changed'; readonly atMs: number } | null;
}

/**
 * Settles "the edges that are there or on order last for every end of this line". All its ends were made: true, whether no
 * edge wore out on the way or a spare took over; false where one wore out and an edge was needed that was not counted on.
 * Closed short of its ends, cancelled or changed: void. Undefined while it is being cut. Lateness for other reasons says
 * nothing about lives and is not judged here. Source: hand (a rule of this project).
 */
export function settleLineEdges({ rows, lacking, ended }: LineSince): Settlement | undefined {
  const left = { cone: lacking.cone ?? 0, thread: lacking.thread ?? 0 };
  let [woreOut, further] = [false, false];
  for (const row of rows) {
    if (ended?.how === 'changed' && row.atMs > ended.atMs) break;
    further ||= row.furtherEdge && woreOut;
    woreOut ||= row.woreOut;
    left[row.operation] = Math.max(0, left[row.operation] - row.goodEnds);
    if (left.cone + left.thread > 0) continue;
    if (further) return { outcome: false, reason: 'further-edge', atMs: row.atMs };
    return { outcome: true, reason: woreOut ? 'spare-took-over' : 'no-edge-wore-out', atMs: row.atMs };
  }
  return ended === null ? undefined : { outcome: null, reason: ended.how, atMs: ended.atMs };
}
