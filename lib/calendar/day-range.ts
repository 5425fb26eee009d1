import { invariant } from '../invariant';
import { addDays, compareDays, type Day, daysBetween } from './day';

/**
 * A stretch of days, both ends included. The end-of-day rule: what runs to a day runs to the end of that day, so a
 * gauge due on the 14th may be used all through the 14th and is overdue from the 15th.
 */
export interface DayRange {
  readonly fromDay: Day;
  readonly toDay: Day;
}

/** How many days two ranges share; 0 when they only follow each other. Same single day in both: 1. */
export function sharedDays(a: DayRange, b: DayRange): number {
  invariant(compareDays(a.fromDay, a.toDay) <= 0, 'a range must not end before it begins');
  invariant(compareDays(b.fromDay, b.toDay) <= 0, 'a range must not end before it begins');
  const fromDay = compareDays(a.fromDay, b.fromDay) >= 0 ? a.fromDay : b.fromDay;
  const toDay = compareDays(a.toDay, b.toDay) <= 0 ? a.toDay : b.toDay;
  return Math.max(0, daysBetween(fromDay, toDay) + 1);
}

/** Whether two ranges share at least one day: two jobs want the same coning body on the same day. */
export function rangesOverlap(a: DayRange, b: DayRange): boolean {
  return sharedDays(a, b) > 0;
}

/**
 * Whether something due on a day is overdue today. End-of-day rule: not on the day itself.
 * @example isPastDue('2026-03-14', '2026-03-14') // => false
 */
export function isPastDue(dueOnDay: Day, today: Day): boolean {
  return compareDays(today, dueOnDay) > 0;
}

/**
 * The first day on which something due is overdue: the day after.
 * @example firstOverdueDay('2026-12-31') // => "2027-01-01"
 */
export function firstOverdueDay(dueOnDay: Day): Day {
  return addDays(dueOnDay, 1);
}
