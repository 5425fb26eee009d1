import { foldWord, type ImportColumn, type ImportKind } from './column';
import { COLUMNS } from './columns';

/** For each column of the file, left to right: the column of ours that it is read as, or null where it is not read. */
export type ColumnMapping = readonly (string | null)[];

/** How a file's headers fit ours. */
export interface ColumnMatch {
  readonly mapping: ColumnMapping;
  /** Headers of the file that are read as nothing. */
  readonly unread: readonly string[];
  /** Columns that the file must have and has not. */
  readonly missing: readonly ImportColumn[];
  /** Columns of ours that two columns of the file were chosen for. */
  readonly doubled: readonly string[];
}

/**
 * Matches a file's headers with the columns that we read: by our header first, then by the other names of a column.
 * The first of two equal headers wins; the other is left unread.
 */
export function matchColumns(kind: ImportKind, header: readonly string[]): ColumnMatch {
  const folded = header.map(foldWord);
  const mapping: (string | null)[] = header.map(() => null);
  const taken = new Set<string>();
  const claim = (key: string, word: string) => {
    const at = folded.findIndex((name, index) => name === word && mapping[index] === null);
    if (at < 0 || taken.has(key)) return;
    mapping[at] = key;
    taken.add(key);
  };
  for (const column of COLUMNS[kind]) claim(column.key, foldWord(column.key));
  for (const column of COLUMNS[kind]) for (const name of column.also) claim(column.key, foldWord(name));
  return judgeMapping(kind, header, mapping);
}

/**
 * Judges a mapping that a person has changed: what is missing, what is read twice, what is not read. A key that is none
 * of ours counts as not read.
 */
export function judgeMapping(
  kind: ImportKind,
  header: readonly string[],
  chosen: ColumnMapping,
): ColumnMatch {
  const columns = COLUMNS[kind];
  const known = new Set(columns.map((column) => column.key));
  const mapping = header.map((_name, at) => {
    const key = chosen[at] ?? null;
    return key !== null && known.has(key) ? key : null;
  });
  const counts = new Map<string, number>();
  for (const key of mapping) if (key !== null) counts.set(key, (counts.get(key) ?? 0) + 1);
  return {
    mapping,
    unread: header.filter((name, at) => mapping[at] === null && name.trim() !== ''),
    missing: columns.filter((column) => column.required && !counts.has(column.key)),
    doubled: [...counts].filter(([, count]) => count > 1).map(([key]) => key),
  };
}
