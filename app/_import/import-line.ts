import type { ImportCheck } from '@/db/commands/import-file';
import type { ImportKind } from '@/lib/import/column';
import type { ColumnMapping } from '@/lib/import/match-columns';

/** How the columns of a file were read: what is missing, doubled or left over, and which kinds of file would fit. */
export interface FileColumns {
  readonly header: readonly string[];
  readonly mapping: ColumnMapping;
  readonly unread: readonly string[];
  readonly missing: readonly string[];
  readonly doubled: readonly string[];
  readonly fits: readonly ImportKind[];
}

/** One line of the answer to a file: how far it is, what was found out, and last of all how it ended. */
export type ImportLine =
  | { readonly step: 'columns'; readonly columns: FileColumns }
  | { readonly step: 'reading'; readonly rowsDone: number; readonly rowsTotal: number }
  | { readonly step: 'deciding'; readonly rowsTotal: number }
  | { readonly step: 'done'; readonly check: ImportCheck }
  | {
      readonly step: 'refused';
      readonly code: string;
      readonly sentence: string;
      readonly check?: ImportCheck;
    };

/** Our columns as one word of an address, left to right; a column that is not read is empty. */
export function columnsText(mapping: ColumnMapping): string {
  return mapping.map((key) => key ?? '').join(',');
}

export function readColumnsText(text: string): ColumnMapping {
  return text
    .slice(0, 20_000)
    .split(',')
    .map((key) => key || null);
}
