import type { Day } from '../calendar/day';
import type { LifeDraws } from '../ensemble/life-draws';
import type { Candidate } from './candidates';
import type { QueuedLine } from './line-order';
import type { NeedStatus } from './need-status';
import type { Pool } from './share-supply';

/** Lives of like pieces, and for lines that they come too late for, the day on which they come. */
export interface LifePool extends Pool {
  readonly lateDays: ReadonlyMap<number, Day>;
}

interface Reached {
  readonly candidate: Candidate;
  readonly reach: number[];
  readonly lateDays: Map<number, Day>;
}

/**
 * Adds the lives of one kind of edge up into pools: pieces that the same lines can use, from the same days.
 * A piece counts for a line that it fits when it is usable by the line's start, or comes before its due day: then it
 * can help to finish, though not to begin (that is a hard need). One that comes on the due day is too late. A tool that
 * the ensemble does not know has no life: it is never assumed to last.
 * `statuses[i]`: how line i's need of this edge stands, undefined when it has none.
 */
export function poolLives(
  queue: readonly QueuedLine[],
  statuses: readonly (NeedStatus | undefined)[],
  draws: LifeDraws,
): LifePool[] {
  const reached = new Map<string, Reached>();
  queue.forEach(({ startOnDay, dueOnDay }, taker) => {
    for (const { candidate, standing } of statuses[taker]?.pieces ?? []) {
      const day = standing.freeFromDay;
      if (day === null) continue;
      const entry: Reached = reached.get(candidate.id) ?? { candidate, reach: [], lateDays: new Map() };
      reached.set(candidate.id, entry);
      if (day <= startOnDay || day < dueOnDay) entry.reach.push(taker);
      else entry.lateDays.set(taker, day);
    }
  });
  const pools = new Map<string, LifePool>();
  for (const { candidate, reach, lateDays } of reached.values()) {
    const life = lifeOf(candidate, draws);
    if (life === undefined) continue;
    const key = `${reach.join()}|${[...lateDays].join()}`;
    const pool: LifePool = pools.get(key) ?? { reach, lateDays, supply: new Float64Array(draws.drawCount) };
    pools.set(key, pool);
    for (let k = 0; k < life.length; k++) pool.supply[k] = (pool.supply[k] as number) + (life[k] as number);
  }
  return [...pools.values()];
}

function lifeOf({ toolId, partId, newIndex }: Candidate, draws: LifeDraws): Float64Array | undefined {
  if (toolId !== null) return draws.residualLife(toolId);
  return newIndex === null ? undefined : draws.newLife(partId, newIndex);
}
