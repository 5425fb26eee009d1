import { type Result, refuse } from '../result';
import { plainCell } from './cell-text';
import type { ImportKind } from './column';
import { type ColumnMapping, judgeMapping } from './match-columns';
import { type CutRow, cutRowContent, readCutRow } from './read-cut-row';
import { type JobRow, readJobRow } from './read-job-row';
import { readToolRow, type ToolRow, toolRowContent } from './read-tool-row';
import { makeRowIds } from './row-id';
import { type ColumnPlaces, placesOf, type RowError, RowReader } from './row-reader';

/** The most rows that one file may have, and the most columns. */
export const ROWS_MAX = 200_000;
export const COLUMNS_MAX = 200;
/** How many errors are listed; all are counted. */
export const ERRORS_LISTED = 200;
const FIRST_ROWS = 20;
const CHUNK = 1000;

/** A file as a grid of cells: its first row is the header. Blank rows are kept, so that row numbers are the sheet's. */
export interface Table {
  readonly header: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export interface Progress {
  readonly rowsDone: number;
  readonly rowsTotal: number;
}

/** The cells of one of the first rows, in the order of `columns`, as they are shown before an import. */
export interface ShownRow {
  readonly rowNo: number;
  readonly cells: readonly string[];
}

interface Read {
  /** Rows that hold anything. */
  readonly rowsTotal: number;
  /** The first errors, in row order. */
  readonly errors: readonly RowError[];
  readonly errorCount: number;
  /** The columns of ours that the file has, left to right, and its first rows under them. */
  readonly columns: readonly string[];
  readonly firstRows: readonly ShownRow[];
  /** What the file calls our columns. */
  readonly places: ColumnPlaces;
}

/** A file read row by row, before it meets the shop's record. */
export type ReadFile =
  | (Read & { readonly kind: 'tools'; readonly rows: readonly Identified<ToolRow>[] })
  | (Read & { readonly kind: 'cuts'; readonly rows: readonly Identified<CutRow>[] })
  | (Read & { readonly kind: 'jobs'; readonly rows: readonly JobRow[] });

/** A row with the ID of the entry that it makes: its own, or one made from what it says. */
export interface Identified<R> {
  readonly entryId: string;
  readonly row: R;
}

type AnyRow = Identified<ToolRow> | Identified<CutRow> | JobRow;

/** How the rows of each kind of file are read; the IDs of equal rows depend on how many came before. */
function makeRowReader(kind: ImportKind): (reader: RowReader) => AnyRow | undefined {
  if (kind === 'jobs') return readJobRow;
  const idOf = makeRowIds(kind);
  if (kind === 'tools') {
    return (reader) => {
      const row = readToolRow(reader);
      return row && { entryId: idOf(toolRowContent(row)), row };
    };
  }
  return (reader) => {
    const row = readCutRow(reader);
    return row && { entryId: row.entryId ?? idOf(cutRowContent(row)), row };
  };
}

/** Whether a file of this shape and mapping can be read at all; the sentence names what is missing. */
export function checkTable(kind: ImportKind, table: Table, mapping: ColumnMapping): Result<null> {
  if (table.header.length > COLUMNS_MAX)
    return refuse(
      'columns',
      `This file has ${table.header.length} columns; at most ${COLUMNS_MAX} are read. Is it the right file?`,
    );
  if (table.rows.length > ROWS_MAX)
    return refuse(
      'rows',
      `This file has ${table.rows.length} rows; at most ${ROWS_MAX} are read at once. Split it into several files.`,
    );
  const { missing, doubled } = judgeMapping(kind, table.header, mapping);
  if (missing.length > 0)
    return refuse(
      'missing',
      `Not found in the first row: ${missing.map((column) => column.key).join(', ')}. Choose which columns they are, or add them to the file.`,
    );
  if (doubled.length > 0)
    return refuse('doubled', `Two columns are read as ${doubled.join(', ')}. Choose one of them.`);
  return { ok: true, value: null };
}

/**
 * Reads the rows of a file, yielding how far it has come after every thousand, so that whoever runs it can show progress
 * and let others work in between. Pure: the same table gives the same rows. Call `checkTable` first.
 */
export function* readRows(
  kind: ImportKind,
  table: Table,
  mapping: ColumnMapping,
): Generator<Progress, ReadFile> {
  const places = placesOf(mapping, table.header);
  const rows: AnyRow[] = [];
  const readRow = makeRowReader(kind);
  const errors: RowError[] = [];
  const firstRows: ShownRow[] = [];
  let [errorCount, rowsTotal] = [0, 0];
  for (const [at, cells] of table.rows.entries()) {
    if (at > 0 && at % CHUNK === 0) yield { rowsDone: at, rowsTotal: table.rows.length };
    if (cells.every((cell) => cell.trim() === '')) continue;
    rowsTotal += 1;
    const reader = new RowReader(at + 2, cells, places);
    if (firstRows.length < FIRST_ROWS) firstRows.push(shownRow(at + 2, cells, places));
    checkWidth(reader, cells, table.header.length);
    const row = readRow(reader);
    if (row !== undefined) rows.push(row);
    errorCount += reader.errors.length;
    if (errors.length < ERRORS_LISTED) errors.push(...reader.errors);
  }
  yield { rowsDone: table.rows.length, rowsTotal: table.rows.length };
  const columns = [...places.keys()];
  const listed = errors.slice(0, ERRORS_LISTED);
  return { kind, rows, rowsTotal, errors: listed, errorCount, columns, firstRows, places } as ReadFile;
}

function shownRow(rowNo: number, cells: readonly string[], places: ColumnPlaces): ShownRow {
  const shown = [...places.values()].map(({ at }) => plainCell((cells[at] ?? '').slice(0, 200)));
  return { rowNo, cells: shown };
}

/** A row with more filled cells than the header has: most often a comma inside a cell without quotes. */
function checkWidth(reader: RowReader, cells: readonly string[], width: number): void {
  const extra = cells.slice(width).some((cell) => cell.trim() !== '');
  if (!extra) return;
  reader.errors.push({
    rowNo: reader.rowNo,
    column: null,
    sentence: `This row has ${cells.length} cells, the first row has ${width}. A cell with a comma in it needs quotes around it.`,
  });
}
