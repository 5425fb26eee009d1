import type { Database } from 'better-sqlite3';
import type { Entry, SubjectKind } from '../../lib/ledger/event';
import { statement } from './statements';

/** A row of the ledger as SQLite holds it. */
export interface EntryRow {
  readonly seq: number;
  readonly id: string;
  readonly kind: string;
  readonly subject_kind: SubjectKind;
  readonly subject_id: string;
  readonly actor_id: string;
  readonly device_at_ms: number;
  readonly server_at_ms: number;
  readonly reason: string;
  readonly payload: string;
  readonly reverses_id: string | null;
  readonly batch_id: string | null;
}

/** The entry that a row holds. Payloads were parsed once, at the door; here they are trusted. */
export function entryOfRow(row: EntryRow): Entry {
  return {
    seq: row.seq,
    id: row.id,
    kind: row.kind,
    subjectId: row.subject_id,
    actorId: row.actor_id,
    deviceAtMs: row.device_at_ms,
    serverAtMs: row.server_at_ms,
    reason: row.reason,
    payload: JSON.parse(row.payload),
  } as Entry;
}

const STANDING = `SELECT e.* FROM entry e
  WHERE e.subject_kind = ? AND e.subject_id = ? AND e.kind <> 'entry-reversed'
    AND NOT EXISTS (SELECT 1 FROM entry r WHERE r.reverses_id = e.id)
  ORDER BY e.seq`;

/** The entries of one subject that stand: reversals and what they took back left out, in order. */
export function standingEntries(client: Database, kind: SubjectKind, id: string): Entry[] {
  return (statement(client, STANDING).all(kind, id) as EntryRow[]).map(entryOfRow);
}

/** One row by its entry ID. */
export function findEntryRow(client: Database, id: string): EntryRow | undefined {
  return statement(client, 'SELECT * FROM entry WHERE id = ?').get(id) as EntryRow | undefined;
}
