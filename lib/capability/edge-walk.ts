import { type Day, daysBetween } from '../calendar/day';
import type { LifeDraws } from '../ensemble/life-draws';
import { invariant } from '../invariant';
import type { EdgeKind } from '../shop/vocabulary';
import { cutsLeftOf } from './cuts-left';
import { poolLives } from './edge-pools';
import { wholeEnds } from './ends-left';
import type { QueuedLine } from './line-order';
import type { NeedStatus } from './need-status';
import { type Demand, shareSupply } from './share-supply';
import { type EndWear, type Waiting, waitingEnds } from './waiting-ends';

/** What one kind of edge holds for one line, after the lines before it. */
export interface EdgeOutlook {
  readonly kind: EdgeKind;
  /** Whole ends per draw, with those of the line that are through this cut already. */
  readonly ends: Float64Array;
  /** The same if the line waited for pieces that come too late for its dates. Null where it lasts in every draw as it is. */
  readonly waiting: Waiting | null;
}

const OPERATION_OF: Record<EdgeKind, 'cone' | 'thread'> = { blade: 'cone', die: 'thread' };

/**
 * Walks the queue once for one kind of edge and spends lives in every draw: ends × base exposure × the material's
 * factor in that draw. Orders come on their drawn days,
 * and a draw in which no edge is there on a line's first day is one in which it is not made. Lines that share a size or a die thus compete in one consistent future. Within a line one edge
 * follows another when the first is done (a swap in mid-job); overlapping lines may hand an edge over. So the order in
 * which like edges go out decides which of them is left, not whether the ends get cut. Where sizes cross, the sharing
 * of a draw is the best there is, as if the crib knew which edge will die: there P is a bound from above.
 * An end that has this cut already, and waits for the other, counts among the ends that the edge allows.
 * A stopped line (`spends[i]` false) is told what there is and takes nothing.
 * Returns one outlook per line, undefined where the line does not use this kind of edge or its material is unknown.
 */
export function walkEdge(
  kind: EdgeKind,
  queue: readonly QueuedLine[],
  statuses: readonly (readonly NeedStatus[])[],
  spends: readonly boolean[],
  draws: LifeDraws,
  today: Day,
): (EdgeOutlook | undefined)[] {
  const wears = queue.map((queued) => wearOf(kind, queued, draws));
  const mine = statuses.map((list, i) =>
    wears[i] === undefined ? undefined : list.find(({ need }) => need.role === kind),
  );
  const pools = poolLives(queue, mine, draws, today);
  const demands = queue.map(({ line }, i): Demand => {
    const wear = wears[i];
    const amount = wear ? wear.exposurePerEnd * cutsLeftOf(line, kind) : 0;
    return { amount, weights: wear?.factors ?? new Float64Array(), takes: spends[i] === true };
  });
  const outlooks: (EdgeOutlook | undefined)[] = queue.map(() => undefined);
  shareSupply(pools, demands, draws.drawCount, (taker, capacity, left) => {
    const wear = wears[taker];
    const queued = queue[taker];
    if (wear === undefined || queued === undefined) return;
    const { endsToMake } = queued.line;
    const endsCut = endsToMake - cutsLeftOf(queued.line, kind);
    const ends = wholeEnds(capacity, wear.exposurePerEnd, wear.factors).map((count) => count + endsCut);
    noneBeforeItBegins(ends, mine[taker], queued.startOnDay, today);
    const lasts = ends.every((count) => count >= endsToMake);
    const waiting = lasts ? null : waitingEnds(pools, left, taker, capacity, { ...wear, endsCut });
    outlooks[taker] = { kind, ends, waiting };
  });
  return outlooks;
}

/** Undefined when the line has no such operation, no table row, or a material without a factor. */
function wearOf(kind: EdgeKind, queued: QueuedLine, draws: LifeDraws): EndWear | undefined {
  const { line, hasTableRow, needs } = queued;
  if (!hasTableRow || !needs.some(({ role }) => role === kind)) return undefined;
  const exposurePerEnd = line.exposurePerEnd[OPERATION_OF[kind]];
  invariant(
    exposurePerEnd !== undefined && exposurePerEnd > 0,
    'a line with a table row has an exposure per end',
  );
  const factors = draws.materialFactor(kind, line.materialId);
  return factors && { exposurePerEnd, factors };
}

/** In a draw in which no edge is there on the first day the line does not begin on its dates: it has no ends then. */
function noneBeforeItBegins(
  ends: Float64Array,
  status: NeedStatus | undefined,
  startOnDay: Day,
  today: Day,
): void {
  const pieces = status?.pieces ?? [];
  const isHere = pieces.some(
    ({ candidate, standing }) =>
      candidate.arrivalDayDraws === null &&
      standing.freeFromDay !== null &&
      standing.freeFromDay <= startOnDay,
  );
  if (isHere) return;
  const startInDays = daysBetween(today, startOnDay);
  const orders = new Set<ArrayLike<number>>();
  for (const { candidate } of pieces)
    if (candidate.arrivalDayDraws !== null) orders.add(candidate.arrivalDayDraws);
  for (let k = 0; k < ends.length; k++)
    if (![...orders].some((days) => (days[k] ?? Number.POSITIVE_INFINITY) <= startInDays)) ends[k] = 0;
}
