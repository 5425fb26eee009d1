import { wholeEnds } from './ends-left';
import type { LateInDays, LifePool } from './life-pool';

/** What a line would have if it waited for pieces that come too late for its dates. */
export interface Waiting {
  /** Days on which something more comes, counted from today, each once, soonest first. */
  readonly inDays: readonly number[];
  /** Whole ends per draw with all that has come by the end of a day. */
  endsBy(inDays: number): Float64Array;
}

/** What one end costs the edge: base exposure, times the material's factor in each draw. */
export interface EndWear {
  readonly exposurePerEnd: number;
  readonly factors: Float64Array;
  /** Ends of the line that are through this cut already. */
  readonly endsCut?: number;
}

interface Late {
  readonly days: LateInDays;
  readonly amounts: Float64Array;
}

/** What waiting would bring to one line, from what is left in pools that come too late for it. */
export function waitingEnds(
  pools: readonly LifePool[],
  left: readonly Float64Array[],
  taker: number,
  capacity: Float64Array,
  wear: EndWear,
): Waiting {
  const late = pools.flatMap(({ lateInDays }, p): Late[] => {
    const days = lateInDays.get(taker);
    return days === undefined ? [] : [{ days, amounts: Float64Array.from(left[p] ?? []) }];
  });
  const here = Float64Array.from(capacity);
  return {
    inDays: [...new Set(late.flatMap(comingDays))].sort((a, b) => a - b),
    endsBy: (inDays) => {
      const sum = Float64Array.from(here);
      for (const { days, amounts } of late)
        for (let k = 0; k < sum.length; k++)
          if (dayAt(days, k) <= inDays) sum[k] = (sum[k] as number) + (amounts[k] as number);
      const ends = wholeEnds(sum, wear.exposurePerEnd, wear.factors);
      return ends.map((count) => count + (wear.endsCut ?? 0));
    },
  };
}

function comingDays({ days, amounts }: Late): number[] {
  if (typeof days === 'number') return [days];
  const coming: number[] = [];
  amounts.forEach((amount, k) => {
    if (amount > 0 && Number.isFinite(dayAt(days, k))) coming.push(dayAt(days, k));
  });
  return coming;
}

function dayAt(days: LateInDays, k: number): number {
  return typeof days === 'number' ? days : (days[k] ?? Number.POSITIVE_INFINITY);
}
