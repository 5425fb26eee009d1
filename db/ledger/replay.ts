import type { Database } from 'better-sqlite3';
import { invariant } from '../../lib/invariant';
import type { SubjectKind } from '../../lib/ledger/event';
import { foldSubject } from '../../lib/ledger/fold';
import type { Db } from '../open';
import { type EntryRow, entryOfRow, standingEntries } from './entry-row';
import { markReversed, SAVE_ORDER, saveCut, saveRecord } from './projection';
import { insert } from './statements';

/**
 * Copies the whole ledger into a fresh database and derives every kept table from it anew. What a shop keeps must equal
 * what its replay gives, row for row.
 */
export function replay(from: Db, into: Db): void {
  const source = from.$client;
  const target = into.$client;
  target
    .transaction(() => {
      const empty = target.prepare('SELECT NOT EXISTS (SELECT 1 FROM entry) AS yes').get() as { yes: number };
      invariant(empty.yes === 1, 'replay requires a fresh database');
      const rows = source.prepare('SELECT * FROM entry ORDER BY seq').iterate() as Iterable<EntryRow>;
      for (const row of rows) insert(target, 'entry', { ...row });
      for (const kind of SAVE_ORDER) deriveSubjects(target, kind);
      deriveCuts(target);
      const files = source.prepare('SELECT * FROM attachment').iterate() as Iterable<Record<string, never>>;
      for (const file of files) insert(target, 'attachment', { ...file });
    })
    .immediate();
}

function deriveSubjects(client: Database, kind: SubjectKind): void {
  const ids = client
    .prepare('SELECT DISTINCT subject_id FROM entry WHERE subject_kind = ? ORDER BY subject_id')
    .pluck()
    .all(kind) as string[];
  for (const id of ids) {
    const folded = foldSubject(kind, standingEntries(client, kind, id));
    invariant(folded.ok, `the ledger of ${kind} ${id} folds`);
    saveRecord(client, kind, id, folded.value);
  }
}

function deriveCuts(client: Database): void {
  const cuts = client.prepare(`SELECT * FROM entry WHERE kind = 'cut-logged' ORDER BY seq`).all();
  for (const row of cuts as EntryRow[]) saveCut(client, entryOfRow(row));
  const reversed = client
    .prepare(`SELECT c.entry_id FROM cut c JOIN entry r ON r.reverses_id = c.entry_id`)
    .pluck()
    .all() as string[];
  for (const id of reversed) markReversed(client, id);
}
