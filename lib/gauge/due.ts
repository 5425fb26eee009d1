import { addDays, compareDays, type Day, daysBetween } from '../calendar/day';
import type { GaugeInterval } from '../shop/gauge-entry';

/** What a gauge's due day is found from. */
export interface DueFacts {
  /** Valid to the END of this day; null: never calibrated, or failed. */
  readonly dueOnDay: Day | null;
  readonly interval: Pick<GaugeInterval, 'intervalEnds'> | null;
  /** Ends gauged with it since its last calibration. */
  readonly endsSince: number;
}

/** How a gauge stands against its due: what comes first, days or ends. */
export interface DueStanding {
  readonly standing: 'none' | 'overdue' | 'ends-used' | 'due-soon' | 'in-date';
  /** Days left, the due day itself counting as 0; null without a due day. */
  readonly daysLeft: number | null;
  /** Ends left; null where it is not counted in ends. */
  readonly endsLeft: number | null;
}

/** A gauge is called due soon this many days, or this share of its ends, before. Common practice, no source. */
export const DUE_SOON_DAYS = 14;
export const DUE_SOON_ENDS_SHARE = 0.1;

/**
 * Where a gauge stands against its due day and its count of ends, whichever comes first. The end-of-day rule: due on the
 * 14th it may be used all through the 14th and is overdue from the 15th. Used-up ends are over at once.
 * @example dueStanding({ dueOnDay: '2026-03-14', interval: null, endsSince: 0 }, '2026-03-14').standing // => "due-soon"
 */
export function dueStanding({ dueOnDay, interval, endsSince }: DueFacts, today: Day): DueStanding {
  const limit = interval?.intervalEnds ?? null;
  const endsLeft = limit === null ? null : Math.max(0, limit - endsSince);
  const daysLeft = dueOnDay === null ? null : daysBetween(today, dueOnDay);
  const at = { daysLeft, endsLeft };
  if (daysLeft === null) return { ...at, standing: 'none' };
  if (daysLeft < 0) return { ...at, standing: 'overdue' };
  if (endsLeft === 0) return { ...at, standing: 'ends-used' };
  const fewEnds = endsLeft !== null && endsLeft <= (limit ?? 0) * DUE_SOON_ENDS_SHARE;
  return { ...at, standing: daysLeft <= DUE_SOON_DAYS || fewEnds ? 'due-soon' : 'in-date' };
}

/** May ends be accepted with it on that day. */
export function isInDate(facts: DueFacts, onDay: Day): boolean {
  const { standing } = dueStanding(facts, onDay);
  return standing === 'in-date' || standing === 'due-soon';
}

/**
 * The day to the end of which a gauge may be used for acceptance, the ends it has left counted in: its due day, or
 * yesterday once its ends are used up. For the plan, which knows days only.
 */
export function usableToDay(facts: DueFacts, today: Day): Day | null {
  const { standing } = dueStanding(facts, today);
  if (standing !== 'ends-used' || facts.dueOnDay === null) return facts.dueOnDay;
  return addDays(today, -1);
}

/** Work in the plan that a gauge will be used on: so many ends between two days, spread evenly. */
export interface PlannedEnds {
  readonly ends: number;
  readonly fromDay: Day;
  readonly toDay: Day;
}

/**
 * The first day on which a gauge's ends will be used up, when all of the planned ends are gauged with it; null when the
 * plan does not use them up. Ends of one line are taken to fall evenly on its days, those already past on today.
 * Domain: endsLeft >= 0, whole ends. Source: hand, plain walk over the days.
 */
export function endsUsedUpOnDay(endsLeft: number, planned: readonly PlannedEnds[], today: Day): Day | null {
  if (endsLeft <= 0) return today;
  const perDay = new Map<Day, number>();
  for (const { ends, fromDay, toDay } of planned) {
    const from = laterOf(fromDay, today);
    const to = laterOf(toDay, from);
    const days = daysBetween(from, to) + 1;
    for (let i = 0; i < days; i++) {
      const day = addDays(from, i);
      perDay.set(day, (perDay.get(day) ?? 0) + ends / days);
    }
  }
  let left = endsLeft;
  for (const day of [...perDay.keys()].sort()) {
    left -= perDay.get(day) ?? 0;
    if (left <= 1e-9) return day;
  }
  return null;
}

function laterOf(a: Day, b: Day): Day {
  return compareDays(a, b) >= 0 ? a : b;
}
