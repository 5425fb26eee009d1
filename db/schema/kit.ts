import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import type { ConflictRecord } from '../../lib/ledger/conflict-history';
import type { CountRecord } from '../../lib/ledger/count-history';
import type { KitRecord } from '../../lib/ledger/kit-history';

/** A stock-take by scanning. */
export const stockCount = sqliteTable('stock_count', {
  id: text('id').primaryKey().notNull(),
  scope: text('scope').$type<CountRecord['scope']>().notNull(),
  expected: integer('expected').notNull(),
  found: integer('found').notNull(),
  variances: text('variances', { mode: 'json' }).$type<CountRecord['variances']>().notNull(),
  countedAtMs: integer('counted_at_ms').notNull(),
  countedById: text('counted_by_id').notNull(),
});

/** What a bench entered without network and the record could not take. */
export const conflict = sqliteTable('conflict', {
  id: text('id').primaryKey().notNull(),
  toolId: text('tool_id').notNull(),
  what: text('what').notNull(),
  sentence: text('sentence').notNull(),
  sent: text('sent').notNull(),
  raisedAtMs: integer('raised_at_ms').notNull(),
  raisedById: text('raised_by_id').notNull(),
  settled: text('settled').$type<ConflictRecord['settled']>(),
  note: text('note').notNull(),
});

/** A kit: what went out together for a line, and what became of it. */
export const kit = sqliteTable('kit', {
  id: text('id').primaryKey().notNull(),
  jobLineId: text('job_line_id').notNull(),
  toPersonId: text('to_person_id').notNull(),
  bench: text('bench').notNull(),
  items: text('items', { mode: 'json' }).$type<KitRecord['items']>().notNull(),
  issuedAtMs: integer('issued_at_ms').notNull(),
  status: text('status').$type<KitRecord['status']>().notNull(),
  missingToolIds: text('missing_tool_ids', { mode: 'json' }).$type<readonly string[]>().notNull(),
  lastSeen: text('last_seen').notNull(),
  closedAtMs: integer('closed_at_ms'),
  lostToolIds: text('lost_tool_ids', { mode: 'json' }).$type<readonly string[]>().notNull(),
});
