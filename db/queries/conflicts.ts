import { asc, desc, isNull } from 'drizzle-orm';
import type { Db } from '../open';
import { conflict } from '../schema';

export type ConflictRow = typeof conflict.$inferSelect;

/** What benches entered without network and the record could not take: the open ones, oldest first. */
export function listOpenConflicts(db: Db): ConflictRow[] {
  return db.select().from(conflict).where(isNull(conflict.settled)).orderBy(asc(conflict.raisedAtMs)).all();
}

/** All of them, the latest first. */
export function listConflicts(db: Db, limit = 200): ConflictRow[] {
  return db.select().from(conflict).orderBy(desc(conflict.raisedAtMs)).limit(limit).all();
}
