import type { Database } from 'better-sqlite3';
import { invariant } from '../../lib/invariant';
import type { SubjectKind } from '../../lib/ledger/event';
import { foldSubject } from '../../lib/ledger/fold';
import { type EntryRow, entryOfRow, standingEntries } from './entry-row';
import { clearAll, markReversed, SAVE_ORDER, saveCut, saveRecord } from './projection';

/** Derives every kept table from the ledger, into tables that are empty. */
export function derive(client: Database): void {
  for (const kind of SAVE_ORDER) deriveSubjects(client, kind);
  deriveCuts(client);
}

/**
 * Empties every kept table and derives it anew from the ledger. After a migration: what newer tables and columns hold is
 * in the old entries already. Inside the transaction of whoever calls.
 */
export function deriveAnew(client: Database): void {
  client.pragma('defer_foreign_keys = ON');
  clearAll(client);
  derive(client);
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
