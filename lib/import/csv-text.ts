import { guardCell } from './cell-text';

/** Tells a spreadsheet program that the file is UTF-8. Our own reader passes over it. */
const BYTE_ORDER_MARK = '\uFEFF';
const NEEDS_QUOTES = /[",;\t\r\n]|^\s|\s$/;

/**
 * A whole CSV file: header, rows, every line ended by CRLF, quotes doubled, cells that look like formulas guarded.
 * Source: RFC 4180, sections 2.1 to 2.7; the byte order mark in front is common practice, no source.
 */
export function csvText(header: readonly string[], rows: Iterable<readonly string[]>): string {
  const lines = [csvLine(header)];
  for (const row of rows) lines.push(csvLine(row));
  return BYTE_ORDER_MARK + lines.join('');
}

/**
 * One line of a CSV file with its line end.
 * @example csvLine(['a', 'b "c"', '=1']) // => 'a,"b ""c""",\'=1\r\n'
 */
export function csvLine(cells: readonly string[]): string {
  return `${cells.map(quoted).join(',')}\r\n`;
}

function quoted(cell: string): string {
  const text = guardCell(cell);
  return NEEDS_QUOTES.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
