import { type Day, dayNumber, dayOfNumber } from './day';

/** A week of ISO 8601: Monday to Sunday, week 1 is the one with the year's first Thursday. */
export interface IsoWeek {
  readonly year: number;
  readonly week: number;
}

/**
 * Day of the week, Monday 1 to Sunday 7 (ISO 8601). 1970-01-01 was a Thursday.
 * @example isoWeekday('2026-01-01') // => 4
 */
export function isoWeekday(day: Day): number {
  const sinceMonday = (dayNumber(day) + 3) % 7;
  return (sinceMonday < 0 ? sinceMonday + 7 : sinceMonday) + 1;
}

/** The ISO week in which a day falls. The week belongs to the year of its Thursday. Domain: years 0002 to 9998. */
export function isoWeek(day: Day): IsoWeek {
  const thursday = dayNumber(day) + 4 - isoWeekday(day);
  const year = Number(dayOfNumber(thursday).slice(0, 4));
  const newYear = dayNumber(`${String(year).padStart(4, '0')}-01-01`);
  return { year, week: Math.floor((thursday - newYear) / 7) + 1 };
}

/**
 * The week as ISO 8601 writes it.
 * @example isoWeekText('2021-01-03') // => "2020-W53"
 */
export function isoWeekText(day: Day): string {
  const { year, week } = isoWeek(day);
  return `${String(year).padStart(4, '0')}-W${String(week).padStart(2, '0')}`;
}

/**
 * The Monday that begins the week of a day.
 * @example weekStartDay('2026-01-01') // => "2025-12-29"
 */
export function weekStartDay(day: Day): Day {
  return dayOfNumber(dayNumber(day) + 1 - isoWeekday(day));
}
