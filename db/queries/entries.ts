import type { SubjectKind } from '../../lib/ledger/event';
import { statement } from '../ledger/statements';
import type { Db } from '../open';

/** An entry of the ledger as a person reads it: who, when, what, and what became of it. */
export interface EntryView {
  readonly seq: number;
  readonly id: string;
  readonly kind: string;
  readonly subjectKind: SubjectKind;
  readonly subjectId: string;
  readonly actorName: string;
  readonly deviceAtMs: number;
  readonly serverAtMs: number;
  readonly reason: string;
  readonly payload: Readonly<Record<string, unknown>>;
  /** The entry that this one takes back. */
  readonly reversesId: string | null;
  /** The entry that took this one back. */
  readonly reversedById: string | null;
  readonly batchId: string | null;
}

const VIEW = `SELECT e.seq, e.id, e.kind, e.subject_kind AS subjectKind, e.subject_id AS subjectId,
    COALESCE(p.name, 'Set-up') AS actorName, e.device_at_ms AS deviceAtMs, e.server_at_ms AS serverAtMs, e.reason,
    e.payload, e.reverses_id AS reversesId, r.id AS reversedById, e.batch_id AS batchId
  FROM entry e LEFT JOIN person p ON p.id = e.actor_id LEFT JOIN entry r ON r.reverses_id = e.id`;

type RawView = Omit<EntryView, 'payload'> & { readonly payload: string };

/** One page of the ledger, newest first, before a given place. */
export function listEntries(db: Db, page: { beforeSeq?: number; limit: number }): EntryView[] {
  const sql = `${VIEW} WHERE e.seq < ? ORDER BY e.seq DESC LIMIT ?`;
  return viewsOf(statement(db.$client, sql).all(page.beforeSeq ?? Number.MAX_SAFE_INTEGER, page.limit));
}

/** Everything that was ever entered about one subject, newest first, reversals and what they took back included. */
export function listEntriesAbout(
  db: Db,
  subject: { kind: SubjectKind; id: string; limit: number },
): EntryView[] {
  const sql = `${VIEW} WHERE e.subject_kind = ? AND e.subject_id = ? ORDER BY e.seq DESC LIMIT ?`;
  return viewsOf(statement(db.$client, sql).all(subject.kind, subject.id, subject.limit));
}

/** One entry by its ID. */
export function findEntry(db: Db, id: string): EntryView | undefined {
  return viewsOf(statement(db.$client, `${VIEW} WHERE e.id = ?`).all(id))[0];
}

/** The data's version: it moves with every entry, so what was computed from the data can be kept until then. */
export function dataVersion(db: Db): number {
  const row = statement(db.$client, 'SELECT COALESCE(MAX(seq), 0) AS seq FROM entry').get() as {
    seq: number;
  };
  return row.seq;
}

function viewsOf(rows: unknown[]): EntryView[] {
  return (rows as RawView[]).map((row) => ({ ...row, payload: JSON.parse(row.payload) }));
}
