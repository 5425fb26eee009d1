import { readCsv } from '@/app/_import/read-csv';
import { checkImport, importFile } from '@/db/commands/import-file';
import type { Db } from '@/db/open';
import type { ImportKind } from '@/lib/import/column';
import { matchColumns } from '@/lib/import/match-columns';
import { checkTable, type ReadFile, readRows, type Table } from '@/lib/import/read-rows';
import { BLADE, DIE, ENV, may, must, receive, testShop } from './db';

/** A grid of cells read with its columns matched by themselves, to the end. */
export function readTable<K extends ImportKind>(kind: K, table: Table): Extract<ReadFile, { kind: K }> {
  const { mapping } = matchColumns(kind, table.header);
  must(checkTable(kind, table, mapping));
  const reading = readRows(kind, table, mapping);
  for (;;) {
    const step = reading.next();
    if (step.done) return step.value as Extract<ReadFile, { kind: K }>;
  }
}

/** The text of a CSV file read the same way. */
export function readText<K extends ImportKind>(kind: K, text: string): Extract<ReadFile, { kind: K }> {
  return readTable(kind, must(readCsv(new TextEncoder().encode(text))));
}

let batches = 0;

/** Imports the text of a CSV file. */
export function importText(db: Db, kind: ImportKind, text: string, nowMs = ENV.nowMs) {
  batches += 1;
  return importFile(db, may('import-file'), readText(kind, text), { nowMs, batchId: `batch-${batches}` });
}

/** A shop with two dies and a blade. */
export function shopWithTools(): Db {
  const db = testShop();
  for (const id of ['D-01', 'D-02']) receive(db, id, DIE);
  receive(db, 'B-01', BLADE);
  return db;
}

export const CUT_HEADER = 'tool_id,cut_on,size,service,material,ends,good_ends,by,edge_ended';

/** The text of a cuts file. */
export function cuts(...rows: string[]): string {
  return [CUT_HEADER, ...rows].join('\n');
}

/** The rows and columns at fault, as the preview says them. */
export function faults(db: Db, kind: 'tools' | 'cuts' | 'jobs', text: string): [number, string | null][] {
  const check = must(checkImport(db, may('import-file'), readText(kind, text), ENV));
  return check.errors.map(({ rowNo, column }) => [rowNo, column]);
}

/** How many rows a table has, or so many of it as a condition leaves. */
export function count(db: Db, sql: string): number {
  return db.$client.prepare(`SELECT COUNT(*) FROM ${sql}`).pluck().get() as number;
}
