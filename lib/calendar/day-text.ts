import { invariant } from '../invariant';
import { type Day, daysBetween, isDay } from './day';

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/**
 * The month of a day, in words with its year.
 * @example monthLabel('2026-03-14') // => "March 2026"
 */
export function monthLabel(day: Day): string {
  return `${monthName(day)} ${Number(day.slice(0, 4))}`;
}

/**
 * A day in words, month never as a number, so that 3/4 cannot be misread.
 * @example dayLabel('2026-03-04') // => "4 Mar 2026"
 */
export function dayLabel(day: Day): string {
  return `${Number(day.slice(8, 10))} ${monthName(day).slice(0, 3)} ${Number(day.slice(0, 4))}`;
}

/**
 * How far a day is from today, as one says it at the counter: today, tomorrow, yesterday, in 12 days, 6 days ago.
 * @example relativeDayText('2026-03-13', '2026-03-01') // => "in 12 days"
 */
export function relativeDayText(day: Day, today: Day): string {
  const days = daysBetween(today, day);
  if (days === 0) return 'today';
  if (days === 1) return 'tomorrow';
  if (days === -1) return 'yesterday';
  return days > 0 ? `in ${days} days` : `${-days} days ago`;
}

function monthName(day: Day): string {
  invariant(isDay(day), `"${day}" is not a day YYYY-MM-DD`);
  const name = MONTHS[Number(day.slice(5, 7)) - 1];
  invariant(name !== undefined, 'there are twelve months');
  return name;
}
