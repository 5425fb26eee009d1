import { invariant } from '../invariant';

/** Takers that reach the same pools, and what they hold of each, per draw. */
export interface TakerGroup {
  readonly pools: readonly number[];
  readonly held: Map<number, Float64Array>;
}

/** How a sharing stands where pools cross and takers may have to be moved. */
export interface Sharing {
  /** What every pool has left, per draw. */
  readonly left: readonly Float64Array[];
  /** Of each pool, the groups that hold some of it in some draw. */
  readonly holders: readonly TakerGroup[][];
}

/** How a pool was reached in the search: the group that could leave `from` for this pool. */
interface Step {
  readonly group: TakerGroup;
  readonly from: number;
}

/** Amounts up to this count as nothing: one millionth of a turn, of a cubic millimetre or of a millilitre. */
const SMALLEST = 1e-6;
/** Shortest paths end after pools × groups × pools of them; this is a guard, not a tuning. */
const PATHS_MAX = 100_000;

/**
 * Makes room in some pools, in one draw, by moving groups that hold some of them to other pools that they can reach,
 * until so much is free or nothing more can be moved. Returns the amount freed, which now stands in `left`.
 * Source: formula, maximum flow by shortest augmenting paths (Edmonds and Karp 1972, from memory).
 */
export function makeRoom(sharing: Sharing, pools: readonly number[], wanted: number, k: number): number {
  let freed = 0;
  for (let paths = 0; wanted - freed > SMALLEST; paths++) {
    invariant(paths < PATHS_MAX, 'making room ends');
    const steps = new Map<number, Step | null>(pools.map((p) => [p, null]));
    const end = searchPool(sharing, steps, k);
    if (end === undefined) break;
    freed += moveAlong(sharing, end, steps, wanted - freed, k);
  }
  return freed;
}

/** Breadth first from the pools that need room, over groups that could move, to another pool with something left. */
function searchPool(
  { left, holders }: Sharing,
  steps: Map<number, Step | null>,
  k: number,
): number | undefined {
  for (const [p, step] of steps) {
    if (step !== null && (left[p]?.[k] ?? 0) > SMALLEST) return p;
    for (const group of holders[p] ?? []) {
      if ((group.held.get(p)?.[k] ?? 0) <= SMALLEST) continue;
      for (const q of group.pools) if (!steps.has(q)) steps.set(q, { group, from: p });
    }
  }
  return undefined;
}

/** Each group on the path leaves one pool for the next; the last pool has some left, the first gains it. */
function moveAlong(
  sharing: Sharing,
  end: number,
  steps: ReadonlyMap<number, Step | null>,
  wanted: number,
  k: number,
): number {
  const { left } = sharing;
  let amount = Math.min(wanted, left[end]?.[k] ?? 0);
  for (let step = steps.get(end); step; step = steps.get(step.from))
    amount = Math.min(amount, step.group.held.get(step.from)?.[k] ?? 0);
  add(left[end], k, -amount);
  let pool = end;
  for (let step = steps.get(end); step; step = steps.get(step.from)) {
    add(heldBy(step.group, pool, sharing), k, amount);
    add(step.group.held.get(step.from), k, -amount);
    pool = step.from;
  }
  add(left[pool], k, amount);
  return amount;
}

/** What a group holds of a pool, per draw: its record, begun with nothing when it first comes there. */
export function heldBy(group: TakerGroup, pool: number, { left, holders }: Sharing): Float64Array {
  const known = group.held.get(pool);
  if (known !== undefined) return known;
  const held = new Float64Array(left[pool]?.length ?? 0);
  group.held.set(pool, held);
  holders[pool]?.push(group);
  return held;
}

function add(amounts: Float64Array | undefined, k: number, amount: number): void {
  invariant(amounts !== undefined, 'a pool on the path has its record');
  amounts[k] = (amounts[k] as number) + amount;
}
