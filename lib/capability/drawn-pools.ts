import type { Candidate } from './candidates';
import type { LifePool } from './life-pool';

/** A piece on order whose day is drawn, and the lines that it fits. */
export interface DrawnPiece {
  readonly candidate: Candidate;
  readonly takers: readonly number[];
}

/**
 * Pools for pieces on order that come on another day in every draw. In draw k a piece reaches the lines whose last useful
 * day is not before its day, so the draws of one order fall into classes: one for every distinct last useful day of the
 * lines that it fits, and one for "too late for all". Each class is a pool that holds something in its own draws only.
 * Pieces of one order come together. Symbols: latestInDays, per line, whole days from today.
 */
export function drawnPools(
  pieces: readonly DrawnPiece[],
  latestInDays: readonly number[],
  drawCount: number,
  lifeOf: (candidate: Candidate) => Float64Array | undefined,
): LifePool[] {
  const orders = new Map<
    string,
    { days: ArrayLike<number>; takers: readonly number[]; life: Float64Array }
  >();
  for (const { candidate, takers } of pieces) {
    const life = lifeOf(candidate);
    const { arrivalDayDraws: days, id } = candidate;
    if (life === undefined || days === null) continue;
    const key = id.slice(0, id.lastIndexOf('/'));
    const order = orders.get(key) ?? { days, takers, life: new Float64Array(drawCount) };
    orders.set(key, order);
    for (let k = 0; k < drawCount; k++) order.life[k] = (order.life[k] as number) + (life[k] as number);
  }
  return [...orders.values()].flatMap(({ days, takers, life }) =>
    classPools(days, takers, life, latestInDays),
  );
}

function classPools(
  days: ArrayLike<number>,
  takers: readonly number[],
  life: Float64Array,
  latestInDays: readonly number[],
): LifePool[] {
  const latestOf = (taker: number): number => latestInDays[taker] ?? Number.NEGATIVE_INFINITY;
  const cutoffs = Float64Array.from(new Set(takers.map(latestOf))).sort();
  const draws: number[][] = Array.from({ length: cutoffs.length + 1 }, () => []);
  for (let k = 0; k < life.length; k++) draws[classOf(cutoffs, days[k] ?? Number.POSITIVE_INFINITY)]?.push(k);
  return draws.flatMap((mine, at): LifePool[] => {
    if (mine.length === 0) return [];
    const cutoff = cutoffs[at] ?? Number.POSITIVE_INFINITY;
    const supply = new Float64Array(life.length);
    for (const k of mine) supply[k] = life[k] as number;
    return [
      {
        reach: takers.filter((taker) => latestOf(taker) >= cutoff),
        lateInDays: new Map(takers.flatMap((t) => (latestOf(t) < cutoff ? [[t, days] as const] : []))),
        supply,
        draws: Int32Array.from(mine),
      },
    ];
  });
}

/** The first cutoff that the day does not miss; as many as there are when it misses them all. */
function classOf(cutoffs: Float64Array, day: number): number {
  let [low, high] = [0, cutoffs.length];
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((cutoffs[middle] as number) >= day) high = middle;
    else low = middle + 1;
  }
  return low;
}
