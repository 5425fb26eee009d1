import { compareDays } from '../calendar/day';
import { setNeeds } from '../capability/complete-set';
import { usableToDay } from '../gauge/due';
import { CALIBRATED_ROLES } from '../shop/vocabulary';
import { endsToMake } from './plan-facts';
import type { LineFacts, ShopFacts, ToolFacts } from './shop-facts';

/** A gauge that falls due before a job it would serve is done. */
export interface LapseWarning {
  readonly toolId: string;
  /** The last day, to its end, on which it may accept. */
  readonly usableToDay: string;
  readonly lineId: string;
  readonly lineDueOnDay: string;
  /** Gauges of the same kind and size that are in date through the whole line and can be had. */
  readonly twinIds: readonly string[];
}

/**
 * Gauges that fall due while a planned job still runs, each with the twins that would carry it: for the warning when it is
 * issued, and for sending it away in good time. Cutting goes on without it; accepting does not. Lines that begin after
 * the gauge is due are not meant: it will have been sent by then. Source: hand; end-of-day rule of `due.ts`.
 */
export function lapseWarnings(facts: ShopFacts): LapseWarning[] {
  const gauges = facts.tools.filter(
    (tool) => CALIBRATED_ROLES.includes(tool.role) && (tool.state === 'in-crib' || tool.state === 'issued'),
  );
  const fits = new Map(facts.parts.map((part) => [part.id, part.fitsConnectionIds]));
  const serves = (tool: ToolFacts, line: LineFacts) =>
    (fits.get(tool.partId) ?? []).includes(line.connectionId) &&
    setNeeds(line.operations).some(({ role }) => role === tool.role) &&
    (tool.jobLineId === null || tool.jobLineId === line.id);
  return gauges.flatMap((gauge) => {
    const last = lastDayOf(facts, gauge);
    if (last === null) return [];
    return facts.lines.flatMap((line): LapseWarning[] => {
      if (endsToMake(line) === 0 || !serves(gauge, line) || !runsOver(line, last, facts.today)) return [];
      const twins = gauges.filter(
        (other) =>
          other.id !== gauge.id &&
          other.role === gauge.role &&
          other.hand === gauge.hand &&
          serves(other, line) &&
          compareDays(lastDayOf(facts, other) ?? '0001-01-01', line.dueOnDay) >= 0,
      );
      const about = { toolId: gauge.id, usableToDay: last, lineId: line.id, lineDueOnDay: line.dueOnDay };
      return [{ ...about, twinIds: twins.map(({ id }) => id) }];
    });
  });
}

/** The line is under way, or begins, while the gauge is good, and ends after it; or the gauge is over and the line runs. */
function runsOver(line: LineFacts, last: string, today: string): boolean {
  if (compareDays(line.dueOnDay, last) <= 0) return false;
  const begins = compareDays(line.startOnDay, today) > 0 ? line.startOnDay : today;
  return compareDays(begins, last) <= 0 || compareDays(line.startOnDay, today) <= 0;
}

function lastDayOf({ gaugeUse = [], today }: ShopFacts, { id, dueOnDay }: ToolFacts): string | null {
  const use = gaugeUse.find(({ toolId }) => toolId === id);
  return usableToDay({ dueOnDay, interval: use ?? null, endsSince: use?.endsSince ?? 0 }, today);
}
