import { CsvError, parse } from 'csv-parse/sync';
import { decodeText } from '@/lib/import/decode-text';
import { detectDelimiter } from '@/lib/import/delimiter';
import { COLUMNS_MAX, ROWS_MAX, type Table } from '@/lib/import/read-rows';
import { ok, type Result, refuse } from '@/lib/result';

/** The longest row that is read, in characters; a real one is far shorter. */
const ROW_CHARACTERS_MAX = 100_000;

/**
 * The cells of an uploaded CSV file (RFC 4180): UTF-8 with or without a byte order mark, commas, semicolons or tabs,
 * any line ends. Rows keep their numbers: blank ones stay in place. What cannot be read is refused in a sentence.
 */
export function readCsv(bytes: Uint8Array): Result<Table> {
  const text = decodeText(bytes);
  if (!text.ok) return text;
  const rows = parseText(text.value);
  if (!rows.ok) return rows;
  const [header, ...body] = rows.value;
  if (header === undefined || header.every((cell) => cell.trim() === ''))
    return refuse('no-header', 'The first row is empty. It must hold the names of the columns.');
  if (header.length > COLUMNS_MAX)
    return refuse('columns', `The first row has more than ${COLUMNS_MAX} columns. Is it the right file?`);
  if (body.length > ROWS_MAX)
    return refuse('rows', `This file has more than ${ROWS_MAX} rows. Split it into several files.`);
  while (body.length > 0 && body.at(-1)?.every((cell) => cell.trim() === '')) body.pop();
  if (body.length === 0)
    return refuse('no-rows', 'This file has the names of columns and no rows below them.');
  return ok({ header, rows: body });
}

function parseText(text: string): Result<string[][]> {
  try {
    return ok(
      parse(text, {
        bom: true,
        delimiter: detectDelimiter(text),
        relax_column_count: true,
        relax_quotes: true,
        record_delimiter: ['\r\n', '\n', '\r'],
        max_record_size: ROW_CHARACTERS_MAX,
        // A file of nothing but line ends or commas must not fill the memory: no more is kept than the limits need.
        to: ROWS_MAX + 2,
        on_record: (cells: string[]) =>
          cells.length > COLUMNS_MAX ? cells.slice(0, COLUMNS_MAX + 1) : cells,
      }),
    );
  } catch (error) {
    if (error instanceof CsvError) return refusalOf(error);
    throw error;
  }
}

function refusalOf(error: CsvError): Result<never> {
  const rowNo = Number((error as unknown as { records?: number }).records ?? 0) + 1;
  if (error.code === 'CSV_QUOTE_NOT_CLOSED')
    return refuse(
      'quote',
      `A quotation mark is opened in row ${rowNo} and never closed. Close it, or write it twice if it is meant as a sign.`,
    );
  if (error.code === 'CSV_MAX_RECORD_SIZE')
    return refuse(
      'row-size',
      `Row ${rowNo} is longer than ${ROW_CHARACTERS_MAX} characters. A quotation mark may be missing at the end of a cell.`,
    );
  return refuse(
    'csv',
    `Row ${rowNo} cannot be read as CSV. Look for quotation marks in the middle of a cell.`,
  );
}
