import { addDays, type Day, isDay, isoWeekText, weekStartDay } from '@/lib/calendar';

/** The Monday that an address asks for (?week=2026-W48), or that of today where it asks for none or for nonsense. */
export function askedWeek(asked: string | string[] | undefined, today: Day): Day {
  const match = typeof asked === 'string' ? /^(\d{4})-W(\d{2})$/.exec(asked) : null;
  const year = match?.[1];
  if (year === undefined || !isDay(`${year}-01-04`)) return weekStartDay(today);
  // The fourth of January always lies in week 1 (ISO 8601).
  const monday = addDays(weekStartDay(`${year}-01-04`), 7 * (Number(match?.[2]) - 1));
  return isoWeekText(monday) === asked ? monday : weekStartDay(today);
}
