import 'server-only';
import { setImmediate as nextTurn } from 'node:timers/promises';
import { IMPORT_KINDS, type ImportKind } from '@/lib/import/column';
import { type ColumnMapping, judgeMapping, matchColumns } from '@/lib/import/match-columns';
import { checkTable, type ReadFile, readRows, type Table } from '@/lib/import/read-rows';
import { ok, type Result, refuse } from '@/lib/result';
import type { Listener } from './answer-lines';
import type { FileColumns } from './import-line';
import { readCsv } from './read-csv';

/** A file as it was sent: what it is said to be, its bytes, and which columns were chosen, if any. */
export interface Upload {
  readonly kind: ImportKind;
  readonly bytes: Uint8Array;
  readonly mapping: ColumnMapping | null;
}

/** Reads a file to its rows, a thousand at a time, and lets others have their turn in between. */
export async function readUpload(upload: Upload, { say, isGone }: Listener): Promise<Result<ReadFile>> {
  const table = readCsv(upload.bytes);
  if (!table.ok) return table;
  const columns = fileColumns(upload, table.value);
  say({ step: 'columns', columns });
  const fit = checkTable(upload.kind, table.value, columns.mapping);
  if (!fit.ok) return fit;
  const reading = readRows(upload.kind, table.value, columns.mapping);
  for (;;) {
    const step = reading.next();
    if (step.done) return ok(step.value);
    say({ step: 'reading', ...step.value });
    await nextTurn();
    if (isGone()) return refuse('gone', 'Nobody waits for this file any more.');
  }
}

function fileColumns({ kind, mapping }: Upload, { header }: Table): FileColumns {
  const match = mapping === null ? matchColumns(kind, header) : judgeMapping(kind, header, mapping);
  return {
    header,
    mapping: match.mapping,
    unread: match.unread,
    missing: match.missing.map(({ key }) => key),
    doubled: match.doubled,
    fits: IMPORT_KINDS.filter((other) => matchColumns(other, header).missing.length === 0),
  };
}
