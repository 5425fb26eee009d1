import type { Day } from '../calendar/day';
import { invariant } from '../invariant';
import type { Hand } from '../shop/vocabulary';
import { type SetNeed, setNeeds } from './complete-set';
import type { PlanConnection, PlanLine } from './plan-input';

/** A line made ready for the walk: its place in the queue, the days that are left of it, what it needs. */
export interface QueuedLine {
  readonly line: PlanLine;
  readonly needs: readonly SetNeed[];
  /** Not before today: a line that should have begun begins now. */
  readonly startOnDay: Day;
  /** Not before its start: an overdue line is due now. */
  readonly dueOnDay: Day;
  /** Of the table row; left hand, as every tube thread is, when there is none. */
  readonly hand: Hand;
  readonly hasTableRow: boolean;
}

/** The later of two days. */
export function laterDay(a: Day, b: Day): Day {
  return a >= b ? a : b;
}

/**
 * The lines in the order in which they are served: by start, then due day, then line id, so that the order in which
 * they were typed never matters. A line that only asks comes after all others. A line with no ends left needs nothing.
 */
export function queueLines(
  lines: readonly PlanLine[],
  connections: readonly PlanConnection[],
  today: Day,
): QueuedLine[] {
  const hands = new Map(connections.map((connection) => [connection.connectionId, connection.hand]));
  invariant(new Set(lines.map((line) => line.lineId)).size === lines.length, 'plan lines need distinct ids');
  return [...lines].sort(compareLines).map((line) => {
    invariant(line.endsToMake >= 0, 'a plan line needs ends of 0 or more');
    const startOnDay = laterDay(line.startOnDay, today);
    return {
      line,
      needs: line.endsToMake > 0 ? setNeeds(line.operations) : [],
      startOnDay,
      dueOnDay: laterDay(line.dueOnDay, startOnDay),
      hand: hands.get(line.connectionId) ?? 'LH',
      hasTableRow: hands.has(line.connectionId),
    };
  });
}

function compareLines(a: PlanLine, b: PlanLine): number {
  if (a.asksOnly !== b.asksOnly && (a.asksOnly || b.asksOnly)) return a.asksOnly ? 1 : -1;
  if (a.startOnDay !== b.startOnDay) return a.startOnDay < b.startOnDay ? -1 : 1;
  if (a.dueOnDay !== b.dueOnDay) return a.dueOnDay < b.dueOnDay ? -1 : 1;
  return a.lineId < b.lineId ? -1 : 1;
}
