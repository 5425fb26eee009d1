import { invariant } from '../invariant';
import { stratifiedUniforms } from '../numeric/random-stream';
import { poissonQuantile } from '../stock/poisson-stock';

/** Work that nobody has planned yet: what the log's pace says comes, beyond what is on the books. */
export interface UnplannedWork {
  /** Names the chance. */
  readonly key: string;
  /** Exposure that the log's pace brings over the horizon, per draw. */
  readonly paceExposure: ArrayLike<number>;
  /** Exposure on the books over the same days, per draw. */
  readonly bookedExposure: ArrayLike<number>;
  /** Life left over behind the plan, per draw. */
  readonly leftOver: ArrayLike<number>;
  /** Life of a new piece, per draw. */
  readonly newLife: ArrayLike<number>;
  readonly horizonDays: number;
  readonly drawCount: number;
}

/**
 * The days on which unplanned work begins new pieces, per draw: `needDays[n][k]`. In each draw the pace less what is booked
 * (never below 0) first uses up what the plan leaves over; the rest is a number of pieces that is Poisson about rest ÷ life,
 * as a slow item's demand is, spread evenly over the days after the left-over life is gone.
 */
export function unplannedNeed(work: UnplannedWork): Float64Array[] {
  const { key, paceExposure, bookedExposure, leftOver, newLife, horizonDays, drawCount } = work;
  const chance = stratifiedUniforms(`unplanned:${key}`, drawCount);
  const needDays: Float64Array[] = [];
  for (let k = 0; k < drawCount; k++) {
    const extra = Math.max(0, (paceExposure[k] ?? 0) - (bookedExposure[k] ?? 0));
    const rest = extra - (leftOver[k] ?? 0);
    const life = newLife[k] ?? 0;
    if (rest <= 0 || life <= 0) continue;
    const pieces = Math.min(PIECES_MAX, poissonQuantile(rest / life, chance[k] as number));
    const from = (horizonDays * (leftOver[k] ?? 0)) / extra;
    for (let n = 0; n < pieces; n++) {
      const day = from + ((horizonDays - from) * n) / pieces;
      const days = needDays[n] ?? new Float64Array(drawCount).fill(Number.POSITIVE_INFINITY);
      needDays[n] = days;
      days[k] = day;
    }
  }
  return needDays;
}

const PIECES_MAX = 100;

/** Two lists of need days as one, rising in every draw. */
export function mergeNeeds(
  a: readonly Float64Array[],
  b: readonly Float64Array[],
  drawCount: number,
): Float64Array[] {
  const lists = [...a, ...b];
  invariant(
    lists.every((days) => days.length === drawCount),
    'need days have one figure per draw',
  );
  if (b.length === 0) return [...a];
  const merged = lists.map(() => new Float64Array(drawCount));
  for (let k = 0; k < drawCount; k++) {
    const days = lists.map((list) => list[k] as number).sort((x, y) => x - y);
    days.forEach((day, n) => {
      (merged[n] as Float64Array)[k] = day;
    });
  }
  return merged.filter((days) => days.some(Number.isFinite));
}
