import { addDays, type Day, daysBetween } from '../calendar/day';
import type { FluidLog, FluidUseRow } from './fluid-log';
import type { MeasuredUse } from './use-ratio';

/** A bottle as far as past use can be laid at its door. */
export interface PastBottle {
  readonly toolId: string;
  readonly openedOnDay: Day | null;
  /** The day after which it was no longer drawn from: used up, scrapped, disposed of. */
  readonly endedOnDay: Day | null;
  readonly dropsPerMl: number;
  permits(materialId: string): boolean;
}

export interface BottleUse extends MeasuredUse {
  readonly toolId: string;
  readonly fromDay: Day;
  readonly toDay: Day;
}

interface Span {
  readonly bottle: PastBottle;
  readonly fromDay: Day;
  readonly toDay: Day;
  readonly measuredMl: number;
  readonly mlPerDay: number;
  plannedMl: number;
}

/**
 * What left each bottle between its first and its last level, beside what was planned meanwhile. A row of the cut log that
 * names no bottle is shared among those open, permitted and between two levels on its day, by how fast each of them fell. A row
 * on the day of the first level counts, one on the day of the last does not. Bottles read once, that seem to have filled up, or
 * for which nothing was planned, teach nothing.
 */
export function measuredUses(log: FluidLog, bottles: readonly PastBottle[]): BottleUse[] {
  const spans = levelSpans(log, bottles);
  for (const row of log.rows) {
    if (row.drops === 0) continue;
    const mine = spans.filter((span) => drewFor(span, row));
    const total = mine.reduce((sum, span) => sum + span.mlPerDay, 0);
    if (total === 0) continue;
    for (const span of mine) span.plannedMl += ((row.drops / span.bottle.dropsPerMl) * span.mlPerDay) / total;
  }
  return spans.flatMap(({ bottle: { toolId }, fromDay, toDay, measuredMl, plannedMl }) =>
    plannedMl > 0 ? [{ toolId, fromDay, toDay, measuredMl, plannedMl }] : [],
  );
}

function drewFor({ bottle, fromDay, toDay }: Span, { onDay, fluidId, materialId }: FluidUseRow): boolean {
  if (onDay < fromDay || onDay >= toDay) return false;
  if (fluidId !== null) return fluidId === bottle.toolId;
  const { openedOnDay, endedOnDay } = bottle;
  if (openedOnDay === null || openedOnDay > onDay || (endedOnDay ?? '9999') < onDay) return false;
  return bottle.permits(materialId);
}

/** First and last level of every bottle, and how fast it fell between them since it was opened. */
function levelSpans({ levels }: FluidLog, bottles: readonly PastBottle[]): Span[] {
  const inOrder = [...levels].sort((a, b) => (a.onDay < b.onDay ? -1 : a.onDay > b.onDay ? 1 : 0));
  return bottles.flatMap((bottle) => {
    const own = inOrder.filter(({ toolId }) => toolId === bottle.toolId);
    const [first, last] = [own[0], own.at(-1)];
    if (first === undefined || last === undefined || last.onDay <= first.onDay) return [];
    const measuredMl = first.levelMl - last.levelMl;
    if (measuredMl <= 0) return [];
    const { openedOnDay } = bottle;
    const drawnFrom = openedOnDay !== null && openedOnDay > first.onDay ? openedOnDay : first.onDay;
    const days = Math.max(1, daysBetween(drawnFrom, last.onDay));
    const mlPerDay = measuredMl / days;
    return [{ bottle, fromDay: first.onDay, toDay: last.onDay, measuredMl, mlPerDay, plannedMl: 0 }];
  });
}

/** Drops planned a day over the last `days` before today: the pace at which the log goes, whatever the bottle. */
export function dropsPerDay(rows: readonly FluidUseRow[], today: Day, days: number): number {
  const from = addDays(today, -days);
  let drops = 0;
  for (const row of rows) if (row.onDay >= from && row.onDay < today) drops += row.drops;
  return drops / days;
}
