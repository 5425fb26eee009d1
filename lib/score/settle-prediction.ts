import type { EdgeEnd } from '../shop/vocabulary';
import type { Prediction, Settlement } from './prediction';

/** A row cut since a prediction was made. `otherWork`: of another size or material than it was about. */
export interface RowSince {
  readonly atMs: number;
  readonly ends: number;
  readonly goodEnds: number;
  readonly otherWork?: boolean;
}

/** What the record says of an edge since a prediction about it was made. */
export interface EdgeSince {
  /** Rows cut since, in order. Where the edge was found worn, `goodEnds` of the last row are those cut before it. */
  readonly rows: readonly RowSince[];
  readonly ended: { readonly how: EdgeEnd | 'lost'; readonly atMs: number } | null;
}

/**
 * Settles "this tool finishes n ends" from what followed. It cut n before anything ended it: true. It wore out before: false,
 * also when it was found worn on the n-th with fewer good ones. Taken out while good, lost or ended by an incident before
 * n: void, for such a case says nothing about wear. Put to other work before n: void from there on, for an end of other work
 * takes more or less of the edge than the ends that were spoken of; recutting and cutting dry are not other work, for they come
 * with a worn edge. Undefined while it is still open.
 * Source: hand (a rule of this project).
 */
export function settleToolFinishes(ends: number, since: EdgeSince): Settlement | undefined {
  const { rows, ended } = since;
  const worn = ended?.how === 'worn';
  let done = 0;
  for (const [i, row] of rows.entries()) {
    if (row.otherWork === true) return { outcome: null, reason: 'other-work', atMs: row.atMs };
    done += worn && i === rows.length - 1 ? Math.min(row.goodEnds, row.ends) : row.ends;
    if (done >= ends)
      return { outcome: true, reason: 'cut-them', atMs: row.atMs, lasted: lastedOf(rows, ended) };
  }
  if (ended === null) return undefined;
  const { atMs } = ended;
  if (worn) return { outcome: false, reason: 'wore-out-before', atMs, lasted: lastedOf(rows, ended) };
  const reason = ended.how === 'lost' ? 'lost' : ended.how === 'incident' ? 'incident' : 'removed-while-good';
  return { outcome: null, reason, atMs };
}

function lastedOf(rows: EdgeSince['rows'], ended: EdgeSince['ended']): Settlement['lasted'] {
  const other = rows.findIndex((row) => row.otherWork === true);
  const same = other < 0 ? rows : rows.slice(0, other);
  const exact = ended?.how === 'worn' && other < 0;
  const last = same.length - 1;
  const ends = same.reduce((sum, row, i) => sum + (exact && i === last ? row.goodEnds : row.ends), 0);
  return { ends, exact };
}

/** Settles "this line is made by its day": done on or before it, done late, or cancelled (void). Undefined while open. */
export function settleLineMade(
  line: { doneOnDay: string | null; cancelled: boolean; byDay: string },
  today: { day: string; atMs: number },
): Settlement | undefined {
  const { atMs } = today;
  if (line.doneOnDay !== null) {
    const made = line.doneOnDay <= line.byDay;
    return { outcome: made, reason: made ? 'made-in-time' : 'late', atMs };
  }
  if (line.cancelled) return { outcome: null, reason: 'cancelled', atMs };
  return today.day > line.byDay ? { outcome: false, reason: 'late', atMs } : undefined;
}

/** Settles "ordered now, it is here by the day": received whole on or before it, later, or cancelled (void). */
export function settleOrderBy(
  order: { receivedOnDay: string | null; cancelled: boolean; byDay: string },
  today: { day: string; atMs: number },
): Settlement | undefined {
  const { atMs } = today;
  if (order.receivedOnDay !== null) {
    const arrived = order.receivedOnDay <= order.byDay;
    return { outcome: arrived, reason: arrived ? 'arrived-in-time' : 'late', atMs };
  }
  if (order.cancelled) return { outcome: null, reason: 'cancelled', atMs };
  return today.day > order.byDay ? { outcome: false, reason: 'late', atMs } : undefined;
}

/** The prediction with its settlement, unless it has one already: the first settlement stands. */
export function settled(prediction: Prediction, settlement: Settlement | undefined): Prediction {
  return prediction.settled === null && settlement !== undefined
    ? { ...prediction, settled: settlement }
    : prediction;
}
