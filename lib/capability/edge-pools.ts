import { type Day, daysBetween } from '../calendar/day';
import type { LifeDraws } from '../ensemble/life-draws';
import { invariant } from '../invariant';
import type { Candidate } from './candidates';
import { drawnPools } from './drawn-pools';
import type { LifePool } from './life-pool';
import type { QueuedLine } from './line-order';
import type { NeedStatus } from './need-status';

interface Reached {
  readonly candidate: Candidate;
  readonly reach: number[];
  readonly lateInDays: Map<number, number>;
}

/**
 * Adds the lives of one kind of edge up into pools: pieces that the same lines can use, from the same days.
 * A piece counts for a line that it fits when it is usable by the line's start, or comes before its due day: then it
 * can help to finish, though not to begin (that is a hard need). One that comes on the due day is too late. A piece on
 * order whose day is drawn counts so in every draw by its own day. A tool that the ensemble does not know has no life:
 * it is never assumed to last.
 * `statuses[i]`: how line i's need of this edge stands, undefined when it has none.
 */
export function poolLives(
  queue: readonly QueuedLine[],
  statuses: readonly (NeedStatus | undefined)[],
  draws: LifeDraws,
  today: Day,
): LifePool[] {
  const dated = new Map<string, Reached>();
  const drawn = new Map<string, { candidate: Candidate; takers: number[] }>();
  queue.forEach((queued, taker) => {
    for (const { candidate, standing } of statuses[taker]?.pieces ?? []) {
      if (candidate.arrivalDayDraws === null)
        reachOnDay(dated, candidate, standing.freeFromDay, taker, queued, today);
      else {
        const entry = drawn.get(candidate.id) ?? { candidate, takers: [] };
        drawn.set(candidate.id, entry);
        entry.takers.push(taker);
      }
    }
  });
  const latestInDays = queue.map((queued) => latestUseInDays(queued, today));
  return [
    ...datedPools(dated, draws),
    ...drawnPools([...drawn.values()], latestInDays, draws.drawCount, (candidate) =>
      lifeOf(candidate, draws),
    ),
  ];
}

/** The last day, counted from today, on which an edge that comes still helps: the start, or the day before the due day. */
function latestUseInDays({ startOnDay, dueOnDay }: QueuedLine, today: Day): number {
  return Math.max(daysBetween(today, startOnDay), daysBetween(today, dueOnDay) - 1);
}

function reachOnDay(
  dated: Map<string, Reached>,
  candidate: Candidate,
  day: Day | null,
  taker: number,
  { startOnDay, dueOnDay }: QueuedLine,
  today: Day,
): void {
  if (day === null) return;
  const entry: Reached = dated.get(candidate.id) ?? { candidate, reach: [], lateInDays: new Map() };
  dated.set(candidate.id, entry);
  if (day <= startOnDay || day < dueOnDay) entry.reach.push(taker);
  else entry.lateInDays.set(taker, daysBetween(today, day));
}

function datedPools(dated: ReadonlyMap<string, Reached>, draws: LifeDraws): LifePool[] {
  const pools = new Map<string, LifePool>();
  for (const { candidate, reach, lateInDays } of dated.values()) {
    const life = lifeOf(candidate, draws);
    if (life === undefined) continue;
    const key = `${reach.join()}|${[...lateInDays].join()}`;
    const pool: LifePool = pools.get(key) ?? { reach, lateInDays, supply: new Float64Array(draws.drawCount) };
    pools.set(key, pool);
    for (let k = 0; k < life.length; k++) pool.supply[k] = (pool.supply[k] as number) + (life[k] as number);
  }
  return [...pools.values()];
}

function lifeOf(
  { toolId, partId, newIndex, arrivalDayDraws }: Candidate,
  draws: LifeDraws,
): Float64Array | undefined {
  invariant(
    arrivalDayDraws === null || arrivalDayDraws.length === draws.drawCount,
    'an order has one arrival day for every draw',
  );
  if (toolId !== null) return draws.residualLife(toolId);
  return newIndex === null ? undefined : draws.newLife(partId, newIndex);
}
