import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core';

/** The ledger: everything that happened, in order. Triggers refuse any change. */
export const entry = sqliteTable('entry', {
  seq: integer('seq').primaryKey({ autoIncrement: true }),
  id: text('id').notNull(),
  kind: text('kind').notNull(),
  subjectKind: text('subject_kind').notNull(),
  subjectId: text('subject_id').notNull(),
  actorId: text('actor_id').notNull(),
  deviceAtMs: integer('device_at_ms').notNull(),
  serverAtMs: integer('server_at_ms').notNull(),
  reason: text('reason').notNull(),
  payload: text('payload').notNull(),
  reversesId: text('reverses_id'),
  batchId: text('batch_id'),
});
