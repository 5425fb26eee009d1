import { addDays, type Day, dayNumber, dayOfMs } from '../../lib/calendar/day';

const DAY_MS = 86_400_000;
const MINUTE_MS = 60_000;
const DAYS_PER_MONTH = 30.4375;

/** Days of the demo, counted from the day it is made: so it never ages. Offsets below zero lie in the past. */
export interface Calendar {
  readonly now: number;
  /** The day so many days from today. */
  day(offset: number): Day;
  /** The moment on that day, minutes after midnight. Never later than now. */
  at(offset: number, minutes: number): number;
}

/** The calendar of a demo made at `now` (epoch ms); days as in UTC. */
export function calendarOf(now: number): Calendar {
  const today = dayOfMs(now);
  const midnight = dayNumber(today) * DAY_MS;
  return {
    now,
    day: (offset) => addDays(today, offset),
    at: (offset, minutes) => Math.min(now, midnight + offset * DAY_MS + minutes * MINUTE_MS),
  };
}

/**
 * Offset of a day in a month of the story: month 1 is the last one, month 18 the first; days count from 0 to 29.
 * @example monthDay(1, 0) // => -30
 */
export function monthDay(monthsAgo: number, dayInMonth: number): number {
  return -Math.round(monthsAgo * DAYS_PER_MONTH) + dayInMonth;
}
