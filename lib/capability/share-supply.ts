import { invariant } from '../invariant';
import { heldBy, makeRoom, type Sharing, type TakerGroup } from './make-room';
import { nestedTakers } from './nested-reach';

/** Supply that the same takers can reach: the lives of like tools added up, or cans of fluid; one figure per draw. */
export interface Pool {
  /** Places in the queue that may draw on it, ascending. */
  readonly reach: readonly number[];
  readonly supply: Float64Array;
  /** The draws in which it holds anything, where that is not all of them. */
  readonly draws?: Int32Array | undefined;
}

/** What a taker wants: amount × weight in each draw, ≥ 0. One that only asks is told, and takes nothing. */
export interface Demand {
  readonly amount: number;
  readonly weights: Float64Array;
  readonly takes: boolean;
}

/** What the walk tells at each taker, before it takes. Both arrays are reused: copy what must be kept. */
export type AtTaker = (taker: number, capacity: Float64Array, left: readonly Float64Array[]) => void;

/**
 * Shares pools out along a queue, draw by draw: each taker in turn gets as much as it can, up to its demand, of what
 * the takers before it need not have. For lives of edges among plan lines, and for fluid (one draw).
 *
 *   got(1) + … + got(i) = maximum flow from the pools to takers 1…i
 *
 * `capacity` is what the taker's pools hold for it: where it is less than the demand, the most that it can get; where
 * it is more, what it would find today, nobody being moved to give it a surplus.
 * Which pool serves whom is not fixed beforehand: in a draw where a taker would go short, an earlier one is moved to
 * another pool that it can reach. So the order of tools is irrelevant and what each gets is monotone: more supply
 * anywhere never gives any taker less, supply and demand of a transport problem being complements (L. S. Shapley,
 * "Complements and substitutes in the optimal assignment problem", 1962; from memory, and tested on random plans).
 * Where reaches are nested or disjoint, as with tools that differ only in the day on which they come, taking from the
 * pool that the fewest can reach is already the best, and nobody need be moved.
 *
 * One unit throughout: turns, mm³ or mL.
 */
export function shareSupply(
  pools: readonly Pool[],
  demands: readonly Demand[],
  drawCount: number,
  atTaker: AtTaker,
): void {
  const left = pools.map(({ supply }) => Float64Array.from(supply));
  const byTaker = poolsByTaker(pools, demands.length);
  const nested = nestedTakers(pools, byTaker);
  const sharing: Sharing = { left, holders: pools.map(() => []) };
  const groups = new Map<string, TakerGroup>();
  const capacity = new Float64Array(drawCount);
  const wanted = new Float64Array(drawCount);
  demands.forEach(({ amount, weights, takes }, taker) => {
    const mine = byTaker[taker] ?? [];
    const moves = nested[taker] !== true;
    sumLeft(capacity, left, mine, pools);
    for (let k = 0; k < drawCount; k++) {
      wanted[k] = amount === 0 ? 0 : amount * (weights[k] as number);
      const short = (wanted[k] as number) - (capacity[k] as number);
      if (moves && short > 0) capacity[k] = (capacity[k] as number) + makeRoom(sharing, mine, short, k);
    }
    atTaker(taker, capacity, left);
    if (amount === 0 || !takes) return;
    const group = moves ? groupOf(groups, mine) : undefined;
    for (const p of mine) take(left[p], wanted, pools[p]?.draws, group && heldBy(group, p, sharing));
  });
}

/** For each taker its pools, the one that the fewest can reach first. */
function poolsByTaker(pools: readonly Pool[], takerCount: number): number[][] {
  const byTaker: number[][] = Array.from({ length: takerCount }, () => []);
  const narrowFirst = pools.map(({ reach }, p) => ({ reach, p }));
  narrowFirst.sort((a, b) => a.reach.length - b.reach.length || a.p - b.p);
  for (const { reach, p } of narrowFirst) for (const taker of reach) byTaker[taker]?.push(p);
  return byTaker;
}

function sumLeft(
  sum: Float64Array,
  left: readonly Float64Array[],
  mine: readonly number[],
  pools: readonly Pool[],
): void {
  sum.fill(0);
  for (const p of mine) {
    const more = left[p];
    const draws = pools[p]?.draws;
    if (more === undefined) continue;
    if (draws) for (const k of draws) sum[k] = (sum[k] as number) + (more[k] as number);
    else for (let k = 0; k < sum.length; k++) sum[k] = (sum[k] as number) + (more[k] as number);
  }
}

/** Takes what is wanted from one pool as far as it goes, and books it to the group where takers may be moved. */
function take(
  pool: Float64Array | undefined,
  wanted: Float64Array,
  draws: Int32Array | undefined,
  held: Float64Array | undefined,
): void {
  invariant(pool !== undefined, 'a taker reaches pools that exist');
  const takeAt = (k: number): void => {
    const part = Math.min(wanted[k] as number, pool[k] as number);
    pool[k] = (pool[k] as number) - part;
    wanted[k] = (wanted[k] as number) - part;
    if (held) held[k] = (held[k] as number) + part;
  };
  if (draws) for (const k of draws) takeAt(k);
  else for (let k = 0; k < wanted.length; k++) takeAt(k);
}

/** Takers that reach the same pools are one group: it is all one which of them is moved. */
function groupOf(groups: Map<string, TakerGroup>, mine: readonly number[]): TakerGroup {
  const known = groups.get(mine.join());
  if (known !== undefined) return known;
  const group = { pools: mine, held: new Map<number, Float64Array>() };
  groups.set(mine.join(), group);
  return group;
}
