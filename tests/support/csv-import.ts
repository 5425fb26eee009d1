import { readCsv } from '@/app/_import/read-csv';
import { importFile } from '@/db/commands/import-file';
import type { Db } from '@/db/open';
import type { ImportKind } from '@/lib/import/column';
import { matchColumns } from '@/lib/import/match-columns';
import { checkTable, type ReadFile, readRows, type Table } from '@/lib/import/read-rows';
import { ENV, may, must } from './db';

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
