import { invariant } from '../invariant';

/** Points that stand for the futures of one edge on a device: enough for whole per cents. */
export const QUANTILE_POINTS = 512;

/** Fewer futures than this still ahead of an edge are too few to say a chance from. */
const FUTURES_MIN = 8;

/**
 * The ends left in every future, thinned to so many points that stand for equal shares, each the shortest of its share:
 * what is read off them never promises more than the draws do. For a device that must answer without the server.
 * Domain: sorted, at least one draw. A chance read off them is at most 1/m too low, never too high.
 */
export function thinnedEnds(sortedEnds: ArrayLike<number>, points = QUANTILE_POINTS): number[] {
  const count = sortedEnds.length;
  invariant(count > 0 && points > 0, 'thinnedEnds requires draws and points');
  return Array.from({ length: points }, (_, i) => {
    const at = Math.floor((i / points) * count);
    return Math.floor((sortedEnds[at] as number) * 100) / 100;
  });
}

/**
 * Chance that an edge finishes `more` ends, now that it has cut `cutSince` ends since the futures were drawn and still
 * cuts: S(k + n)/S(k), counted over the points. Null when it has outlived nearly all of them: nothing honest can be said.
 * Symbols: k = cutSince, n = more, in ends. Domain: both ≥ 0. Source: the definition of conditional survival.
 * @example finishChance([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12], 2, 5) // => 0.5454545454545454
 */
export function finishChance(left: readonly number[], cutSince: number, more: number): number | null {
  invariant(cutSince >= 0 && more >= 0, 'finishChance requires ends of 0 or more');
  const alive = left.filter((ends) => ends >= cutSince).length;
  if (alive < Math.min(FUTURES_MIN, left.length)) return null;
  return left.filter((ends) => ends >= cutSince + more).length / alive;
}

/**
 * The most further ends that are finished with at least the chance asked for; null when nothing honest can be said.
 * @example surelyMore([1, 2, 3, 4, 5, 6, 7, 8, 9, 10], 0, 0.9) // => 2
 */
export function surelyMore(left: readonly number[], cutSince: number, chance: number): number | null {
  const alive = left.filter((ends) => ends >= cutSince).sort((a, b) => a - b);
  if (alive.length < Math.min(FUTURES_MIN, left.length) || alive.length === 0) return null;
  const needed = Math.ceil(chance * alive.length - 1e-9);
  return Math.max(0, Math.floor((alive[alive.length - needed] as number) - cutSince));
}
