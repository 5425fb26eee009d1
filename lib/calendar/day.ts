import { invariant } from '../invariant';

/** A calendar day, 'YYYY-MM-DD' (ISO 8601), years 0001 to 9999. No time of day, no zone. Sorts as text. */
export type Day = string;

const DAY_MS = 86_400_000;
const MINUTE_MS = 60_000;
const DAYS_PER_ERA = 146_097;

/**
 * Whether a text is a real day of the Gregorian calendar.
 * @example isDay('2026-02-29') // => false
 */
export function isDay(text: string): boolean {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (match === null || match[1] === '0000') return false;
  const [year, month, date] = [Number(match[1]), Number(match[2]), Number(match[3])];
  return month >= 1 && month <= 12 && date >= 1 && date <= monthLength(year, month);
}

/**
 * Days since 1970-01-01, negative before. Counts whole years from March, so that the leap day falls last: in an era of
 * 400 years (146 097 days), day of year = floor((153 m + 2) / 5) + d − 1 with m = 0 for March. Throws when not a day.
 * @example dayNumber('1970-01-02') // => 1
 */
export function dayNumber(day: Day): number {
  invariant(isDay(day), `"${day}" is not a day YYYY-MM-DD`);
  const month = Number(day.slice(5, 7));
  const year = Number(day.slice(0, 4)) - (month <= 2 ? 1 : 0);
  const era = Math.floor(year / 400);
  const yearOfEra = year - era * 400;
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + Number(day.slice(8, 10)) - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * DAYS_PER_ERA + dayOfEra - 719_468;
}

/**
 * The inverse of `dayNumber`. Throws outside the years 0001 to 9999.
 * @example dayOfNumber(0) // => "1970-01-01"
 */
export function dayOfNumber(number: number): Day {
  invariant(Number.isSafeInteger(number), 'dayOfNumber requires a whole number');
  const shifted = number + 719_468;
  const era = Math.floor(shifted / DAYS_PER_ERA);
  const dayOfEra = shifted - era * DAYS_PER_ERA;
  const leapDays =
    Math.floor(dayOfEra / 1460) - Math.floor(dayOfEra / 36_524) + Math.floor(dayOfEra / 146_096);
  const yearOfEra = Math.floor((dayOfEra - leapDays) / 365);
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const marchMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  invariant(year >= 1 && year <= 9999, 'dayOfNumber requires a year from 1 to 9999');
  const date = dayOfYear - Math.floor((153 * marchMonth + 2) / 5) + 1;
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(date).padStart(2, '0')}`;
}

/**
 * The day so many days later (earlier when negative).
 * @example addDays('2028-02-28', 2) // => "2028-03-01"
 */
export function addDays(day: Day, days: number): Day {
  return dayOfNumber(dayNumber(day) + days);
}

/**
 * Days from one day to another; negative when `toDay` is earlier.
 * @example daysBetween('2026-03-01', '2026-03-13') // => 12
 */
export function daysBetween(fromDay: Day, toDay: Day): number {
  return dayNumber(toDay) - dayNumber(fromDay);
}

/**
 * Orders two days: negative, 0 or positive. Throws when either is not a day.
 * @example compareDays('2026-03-01', '2026-02-28') // => 1
 */
export function compareDays(a: Day, b: Day): number {
  return Math.sign(dayNumber(a) - dayNumber(b));
}

/**
 * The calendar day on which an instant falls, at a fixed offset from UTC. Symbols: ms, milliseconds since
 * 1970-01-01T00:00Z; utcOffsetMinutes, local minus UTC (+60 in the shop's winter time in Berlin). A day runs from 00:00
 * up to, not including, the next 00:00.
 * @example dayOfMs(-1) // => "1969-12-31"
 */
export function dayOfMs(ms: number, utcOffsetMinutes = 0): Day {
  invariant(Number.isFinite(ms) && Number.isFinite(utcOffsetMinutes), 'dayOfMs requires finite numbers');
  return dayOfNumber(Math.floor((ms + utcOffsetMinutes * MINUTE_MS) / DAY_MS));
}

function monthLength(year: number, month: number): number {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}
