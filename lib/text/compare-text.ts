/**
 * Which of two IDs or days stands first, by character code: the same order on every machine and in every language, which an
 * order by the language of the machine is not. Days as YYYY-MM-DD come out in the order of the calendar.
 *
 * @returns −1, 0 or 1, as a sort wants it
 * @example compareText('2026-09-30', '2026-10-01') // => -1
 * @example compareText('D2', 'D2') // => 0
 */
export function compareText(a: string, b: string): -1 | 0 | 1 {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}
