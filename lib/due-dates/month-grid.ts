import { addDays, type Day, isoWeekText, weekStartDay } from '../calendar';
import { invariant } from '../invariant';

/** A week of a month as a wall calendar prints it. */
export interface GridWeek {
  /** ISO 8601, "2026-W48". */
  readonly weekText: string;
  /** Monday to Sunday; those of the months beside it are marked. */
  readonly days: readonly { readonly day: Day; readonly inMonth: boolean }[];
}

/**
 * The weeks that a month touches, Monday first, numbered after ISO 8601. `month`: 'YYYY-MM'. Errors: throws when it is no
 * month.
 * @example monthGrid('2027-02').length // => 4
 */
export function monthGrid(month: string): GridWeek[] {
  invariant(isMonth(month), `"${month}" is not a month YYYY-MM`);
  const weeks: GridWeek[] = [];
  const first = weekStartDay(`${month}-01`);
  for (let monday = first; monday === first || monday.slice(0, 7) <= month; monday = addDays(monday, 7)) {
    const days = Array.from({ length: 7 }, (_, i) => addDays(monday, i));
    weeks.push({
      weekText: isoWeekText(monday),
      days: days.map((day) => ({ day, inMonth: day.startsWith(month) })),
    });
  }
  return weeks;
}

/**
 * Whether a text is a month between 1990 and 2199, as addresses carry it.
 * @example isMonth('2026-13') // => false
 */
export function isMonth(text: string): boolean {
  return /^(?:199\d|20\d\d|21\d\d)-(?:0[1-9]|1[0-2])$/.test(text);
}

/**
 * The month so many later, or earlier when negative.
 * @example addMonths('2026-11', 2) // => "2027-01"
 */
export function addMonths(month: string, months: number): string {
  invariant(isMonth(month), `"${month}" is not a month YYYY-MM`);
  const count = Number(month.slice(0, 4)) * 12 + Number(month.slice(5, 7)) - 1 + months;
  return `${String(Math.floor(count / 12)).padStart(4, '0')}-${String((count % 12) + 1).padStart(2, '0')}`;
}
