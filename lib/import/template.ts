import type { ImportKind } from './column';
import { COLUMNS } from './columns';
import { csvText } from './csv-text';

/** An empty file to fill in: the headers of every column, and nothing below that could be imported by mistake. */
export function templateCsv(kind: ImportKind): string {
  return csvText(
    COLUMNS[kind].map((column) => column.key),
    [],
  );
}
