import type { Result } from '../result';
import { isPrintable } from '../shop/field';
import { plainCell } from './cell-text';
import type { ColumnMapping } from './match-columns';

/** What is wrong in one row: the row as the spreadsheet numbers it (header = 1), the column's header, a sentence. */
export interface RowError {
  readonly rowNo: number;
  readonly column: string | null;
  readonly sentence: string;
}

/** Where each of our columns stands in a file, and what it is called there. */
export type ColumnPlaces = ReadonlyMap<string, { readonly at: number; readonly header: string }>;

/** Finds the place of each column that a mapping reads. */
export function placesOf(mapping: ColumnMapping, header: readonly string[]): ColumnPlaces {
  const places = new Map<string, { at: number; header: string }>();
  mapping.forEach((key, at) => {
    if (key !== null) places.set(key, { at, header: plainCell(header[at] ?? key) });
  });
  return places;
}

/** One row of a file, read cell by cell; what cannot be read is gathered in `errors`, and the reading goes on. */
export class RowReader {
  readonly errors: RowError[] = [];
  readonly rowNo: number;
  readonly #cells: readonly string[];
  readonly #places: ColumnPlaces;

  constructor(rowNo: number, cells: readonly string[], places: ColumnPlaces) {
    this.rowNo = rowNo;
    this.#cells = cells;
    this.#places = places;
  }

  /** Whether the file has this column at all. */
  has(key: string): boolean {
    return this.#places.has(key);
  }

  /** The text of a cell, empty where there is none; longer than `max` is an error. */
  text(key: string, max = 200): string {
    const text = plainCell(this.#cells[this.#places.get(key)?.at ?? -1] ?? '');
    if (text.length > max) return this.#blank(key, `This cell is longer than ${max} characters.`);
    if (!isPrintable(text)) return this.#blank(key, 'This cell holds characters that cannot be printed.');
    return text;
  }

  /** The value of a cell, null where the cell is empty or cannot be read. */
  optional<T>(key: string, read: (text: string) => Result<T>): T | null {
    const text = this.text(key);
    if (text === '') return null;
    const value = read(text);
    if (value.ok) return value.value;
    this.refuse(key, value.refusal.sentence);
    return null;
  }

  /** The same for a cell that must not be empty. */
  needed<T>(
    key: string,
    read: (text: string) => Result<T>,
    sentence = 'This cell must not be empty.',
  ): T | null {
    const before = this.errors.length;
    const value = this.optional(key, read);
    if (value === null && this.errors.length === before) this.refuse(key, sentence);
    return value;
  }

  /** Notes an error in a cell. */
  refuse(key: string, sentence: string): void {
    this.errors.push({ rowNo: this.rowNo, column: this.#places.get(key)?.header ?? key, sentence });
  }

  #blank(key: string, sentence: string): string {
    this.refuse(key, sentence);
    return '';
  }
}
