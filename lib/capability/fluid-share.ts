import type { Day } from '../calendar/day';
import type { QueuedLine } from './line-order';
import type { NeedStatus } from './need-status';
import { type Pool, shareSupply } from './share-supply';

/** What fluid there is for a line after the lines before it, and what it needs. */
export interface FluidShare {
  readonly haveMl: number;
  readonly needMl: number;
  /** First known day from which fluid on order makes up what is short, other lines' wants apart. */
  readonly enoughFromDay: Day | null;
}

/** Half of a drop. Sums of levels carry a last digit. */
const ML_SLACK = 0.01;

/** Whether the share covers the line. A line that plans no fluid by volume still wants some in the bottle. */
export function isFluidEnough({ haveMl, needMl }: Pick<FluidShare, 'haveMl' | 'needMl'>): boolean {
  return haveMl > 0 && haveMl >= needMl - ML_SLACK;
}

/**
 * Shares the fluid among the lines in queue order: mL per end × ends, from whatever is permitted on the line's material
 * and in date through its due day (on order: there before the due day). Drawing first-expired-first-out is then always
 * possible where the permits nest; where they cross, fluid that only one line may use is kept for it.
 * Returns one share per line, undefined for a line that needs no fluid.
 */
export function shareFluid(
  queue: readonly QueuedLine[],
  statuses: readonly (readonly NeedStatus[])[],
  spends: readonly boolean[],
): (FluidShare | undefined)[] {
  const levels = new Map<string, { reach: number[]; levelMl: number }>();
  const mine = statuses.map((list) => list.find(({ need }) => need.role === 'fluid'));
  queue.forEach(({ startOnDay, dueOnDay }, taker) => {
    for (const { candidate, standing } of mine[taker]?.pieces ?? []) {
      const day = standing.freeFromDay;
      if (day === null || (day > startOnDay && day >= dueOnDay)) continue;
      const entry = levels.get(candidate.id) ?? { reach: [], levelMl: candidate.levelMl };
      entry.reach.push(taker);
      levels.set(candidate.id, entry);
    }
  });
  const pools = new Map<string, Pool>();
  for (const { reach, levelMl } of levels.values()) {
    const pool = pools.get(reach.join()) ?? { reach, supply: new Float64Array(1) };
    pool.supply[0] = (pool.supply[0] as number) + levelMl;
    pools.set(reach.join(), pool);
  }
  const needsMl = queue.map(({ line }, i) => (mine[i] ? line.fluidMlPerEnd * line.endsToMake : 0));
  const weights = Float64Array.of(1);
  const demands = needsMl.map((amount, i) => ({ amount, weights, takes: spends[i] === true }));
  const shares: (FluidShare | undefined)[] = queue.map(() => undefined);
  shareSupply([...pools.values()], demands, 1, (taker, capacity) => {
    const status = mine[taker];
    const queued = queue[taker];
    if (status === undefined || queued === undefined) return;
    const share = { haveMl: capacity[0] as number, needMl: needsMl[taker] as number };
    shares[taker] = { ...share, enoughFromDay: firstEnoughDay(share, status, queued.dueOnDay) };
  });
  return shares;
}

function firstEnoughDay(
  share: Pick<FluidShare, 'haveMl' | 'needMl'>,
  { pieces }: NeedStatus,
  dueOnDay: Day,
): Day | null {
  const late = pieces
    .flatMap(({ candidate, standing: { freeFromDay } }) =>
      freeFromDay !== null && freeFromDay >= dueOnDay ? [{ freeFromDay, levelMl: candidate.levelMl }] : [],
    )
    .sort((a, b) => (a.freeFromDay < b.freeFromDay ? -1 : 1));
  let haveMl = share.haveMl;
  for (const { freeFromDay, levelMl } of late) {
    haveMl += levelMl;
    if (isFluidEnough({ haveMl, needMl: share.needMl })) return freeFromDay;
  }
  return null;
}
