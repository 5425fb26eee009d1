import { isDay } from '../calendar/day';
import { ok, type Result, refuse } from '../result';
import { parseInches } from '../units/parse-inches';
import type { Rational } from '../units/rational';
import { readWord, type WordList, YES_NO_WORDS } from './word-list';

/** What a cell says, quoted for a sentence; long ones are cut short. */
export function quoteCell(text: string): string {
  return `“${text.length > 30 ? `${text.slice(0, 29)}…` : text}”`;
}

/**
 * A day. Taken: YYYY-MM-DD, also with slashes or dots, also with a midnight time behind it. A day whose order could be
 * read in two ways is refused, never guessed.
 */
export function readDayCell(text: string): Result<string> {
  const match = /^(\d{4})([-/.])(\d{1,2})\2(\d{1,2})(?:[ T]00:00(?::00)?(?:\.0+)?Z?)?$/.exec(text);
  if (match === null) return refuse('day', dayAdvice(text));
  const day = `${match[1]}-${(match[3] ?? '').padStart(2, '0')}-${(match[4] ?? '').padStart(2, '0')}`;
  if (!isDay(day)) return refuse('day', `${quoteCell(text)} is not a day in the calendar.`);
  if (day < '1990-01-01' || day >= '2200-01-01')
    return refuse('day', `${quoteCell(text)} does not lie between 1990 and 2199.`);
  return ok(day);
}

function dayAdvice(text: string): string {
  const match = /^(\d{1,2})([-/.])(\d{1,2})\2(\d{2}|\d{4})$/.exec(text);
  if (match === null) return `${quoteCell(text)} is not a day. Write it as YYYY-MM-DD, such as 2026-04-03.`;
  const [first, second, year] = [
    (match[1] ?? '').padStart(2, '0'),
    (match[3] ?? '').padStart(2, '0'),
    match[4] ?? '',
  ];
  if (year.length === 4 && first !== second && Number(first) <= 12 && Number(second) <= 12) {
    return `${quoteCell(text)} can be read as two days. Write ${year}-${second}-${first} or ${year}-${first}-${second}.`;
  }
  return `${quoteCell(text)} can be misread. Write the day as YYYY-MM-DD, such as 2026-04-03.`;
}

/** A whole number within bounds, figures only. */
export function readCountCell(text: string, { min, max }: { min: number; max: number }): Result<number> {
  const plain = /^(\d{1,9})(?:\.0{1,6})?$/.exec(text);
  if (plain === null) {
    const why = /[.,]/.test(text) ? ' Write it without commas and places, such as 1200.' : '';
    return refuse('count', `${quoteCell(text)} is not a whole number.${why}`);
  }
  const count = Number(plain[1]);
  if (count < min) return refuse('count', `${count} is too few: it must be at least ${min}.`);
  if (count > max) return refuse('count', `${count} is too many: it must be at most ${max}.`);
  return ok(count);
}

/** A measured number, not below nought, decimals with a point. */
export function readMeasureCell(text: string, { max }: { max: number }): Result<number> {
  if (/^\d+,\d+$/.test(text))
    return refuse(
      'measure',
      `${quoteCell(text)} has a comma. Write decimals with a point, such as ${text.replace(',', '.').slice(0, 12)}.`,
    );
  if (!/^\d{1,9}(?:\.\d{1,9})?$/.test(text)) return refuse('measure', `${quoteCell(text)} is not a number.`);
  const value = Number(text);
  return value > max ? refuse('measure', `${quoteCell(text)} is more than ${max}.`) : ok(value);
}

/** Yes or no: yes, y, true, 1, x; no, n, false, 0. */
export function readYesNoCell(text: string): Result<boolean> {
  const word = readWord(YES_NO_WORDS, text);
  return word === undefined
    ? refuse('yes-no', `${quoteCell(text)} is neither yes nor no.`)
    : ok(word === 'yes');
}

/** A word of a fixed list. `offered` is what the sentence names as the choice. */
export function readWordCell<C extends string>(text: string, list: WordList<C>, offered: string): Result<C> {
  const code = readWord(list, text);
  return code === undefined
    ? refuse('word', `${quoteCell(text)} is not known here. Write ${offered}.`)
    : ok(code);
}

/**
 * A tube size: 9/16, 9⁄16, 9/16 in, 0.5625. Spreadsheets turn 9/16 into the sixteenth of September; that is refused and
 * explained, since nobody can tell what it was.
 */
export function readSizeCell(text: string): Result<Rational> {
  if (/^\d{1,2}[-. ]+(?!inch)\p{L}{3}|^\p{L}{3,}[-. ]\d|^\d{4}-\d|^\d{1,2}[/.]\d{1,2}[/.]\d{2}/u.test(text)) {
    return refuse(
      'size-date',
      `${quoteCell(text)} is a date: a spreadsheet has turned the size into one. Write it as 9/16 in, with the unit.`,
    );
  }
  const size = parseInches(text);
  if (!size.ok) return size;
  if (size.value.den > 64 || size.value.num > 999)
    return refuse('size', `${quoteCell(text)} is not a tube size. Write it as a fraction, such as 9/16 in.`);
  return size;
}
