import type { Day } from '../calendar/day';
import type { LifeDraws } from '../ensemble/life-draws';
import { invariant } from '../invariant';
import type { EdgeKind } from '../shop/vocabulary';
import { type LifePool, poolLives } from './edge-pools';
import { wholeEnds } from './ends-left';
import type { QueuedLine } from './line-order';
import type { NeedStatus } from './need-status';
import { type Demand, shareSupply } from './share-supply';

/** What one kind of edge holds for one line, after the lines before it. */
export interface EdgeOutlook {
  readonly kind: EdgeKind;
  /** Whole ends per draw. */
  readonly ends: Float64Array;
  /**
   * The same if the line waited for pieces that come too late for its dates, soonest first, each adding to the last.
   * Empty where it lasts in every draw as it is.
   */
  readonly endsIfWaiting: readonly { readonly day: Day; readonly ends: Float64Array }[];
}

const OPERATION_OF: Record<EdgeKind, 'cone' | 'thread'> = { blade: 'cone', die: 'thread' };

/**
 * Walks the queue once for one kind of edge and spends lives in every draw: ends × base exposure × the material's
 * factor in that draw. Lines that share a size or a die thus compete in one consistent future. Within a line one edge
 * follows another when the first is done (a swap in mid-job); overlapping lines may hand an edge over. So the order in
 * which like edges go out decides which of them is left, not whether the ends get cut. Where sizes cross, the sharing
 * of a draw is the best there is, as if the crib knew which edge will die: there P is a bound from above.
 * A stopped line (`spends[i]` false) is told what there is and takes nothing.
 * Returns one outlook per line, undefined where the line does not use this kind of edge or its material is unknown.
 */
export function walkEdge(
  kind: EdgeKind,
  queue: readonly QueuedLine[],
  statuses: readonly (readonly NeedStatus[])[],
  spends: readonly boolean[],
  draws: LifeDraws,
): (EdgeOutlook | undefined)[] {
  const wears = queue.map((queued) => wearOf(kind, queued, draws));
  const mine = statuses.map((list, i) =>
    wears[i] === undefined ? undefined : list.find(({ need }) => need.role === kind),
  );
  const pools = poolLives(queue, mine, draws);
  const demands = queue.map(({ line }, i): Demand => {
    const wear = wears[i];
    const amount = wear && spends[i] ? wear.exposurePerEnd * line.endsToMake : 0;
    return { amount, weights: wear?.factors ?? new Float64Array() };
  });
  const outlooks: (EdgeOutlook | undefined)[] = queue.map(() => undefined);
  shareSupply(pools, demands, draws.drawCount, (taker, capacity, left) => {
    const wear = wears[taker];
    if (wear === undefined) return;
    const ends = wholeEnds(capacity, wear.exposurePerEnd, wear.factors);
    const lasts = ends.every((count) => count >= (queue[taker]?.line.endsToMake ?? 0));
    const endsIfWaiting = lasts ? [] : waitForLate(pools, left, taker, capacity, wear);
    outlooks[taker] = { kind, ends, endsIfWaiting };
  });
  return outlooks;
}

/** What one end costs the edge: base exposure, times the material's factor in each draw. */
interface EndWear {
  readonly exposurePerEnd: number;
  readonly factors: Float64Array;
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

function waitForLate(
  pools: readonly LifePool[],
  left: readonly Float64Array[],
  taker: number,
  capacity: Float64Array,
  { exposurePerEnd, factors }: EndWear,
): EdgeOutlook['endsIfWaiting'] {
  const late = pools
    .flatMap(({ lateDays }, p) => {
      const day = lateDays.get(taker);
      return day === undefined ? [] : [{ day, more: left[p] }];
    })
    .sort((a, b) => (a.day < b.day ? -1 : 1));
  let sum = capacity;
  return late.map(({ day, more }) => {
    sum = sum.map((amount, k) => amount + (more?.[k] ?? 0));
    return { day, ends: wholeEnds(sum, exposurePerEnd, factors) };
  });
}
