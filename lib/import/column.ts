/** The three files that can be imported. */
export const IMPORT_KINDS = ['tools', 'cuts', 'jobs'] as const;
export type ImportKind = (typeof IMPORT_KINDS)[number];

/** One column of an import file. */
export interface ImportColumn {
  /** Its header as we write it; any spelling with other case, spaces, dashes or underscores is read too. */
  readonly key: string;
  /** Other headers that are read as this column. */
  readonly also: readonly string[];
  /** Whether the file must have the column. Cells of other columns may still be needed row by row. */
  readonly required: boolean;
  /** One line for the person who fills it in. */
  readonly help: string;
  readonly example: string;
}

/**
 * A header or word folded for comparison: lower case, letters and figures only, gage read as gauge.
 * @example foldWord(' Tool-ID ') // => "toolid"
 */
export function foldWord(text: string): string {
  return text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]/gu, '')
    .replaceAll('gage', 'gauge');
}
