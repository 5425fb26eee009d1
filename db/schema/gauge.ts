import { blob, integer, primaryKey, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import type { GaugeEvidence } from '../../lib/gauge/evidence';
import type { AsFound, Calibration } from '../../lib/shop/calibration';
import type { CertificateType, IntervalMethod } from '../../lib/shop/gauge-entry';
import { yesNo } from './columns';

/** What says whether a gauge was good: calibrations and checks, numbered in the order in which they were entered. */
export const gaugeEvidence = sqliteTable(
  'gauge_evidence',
  {
    toolId: text('tool_id').notNull(),
    no: integer('no').notNull(),
    entryId: text('entry_id').notNull(),
    kind: text('kind').$type<GaugeEvidence['kind']>().notNull(),
    onDay: text('on_day').notNull(),
    atMs: integer('at_ms').notNull(),
    asFound: text('as_found').$type<AsFound>().notNull(),
    asLeft: text('as_left').$type<'in' | 'out'>().notNull(),
    qualifies: yesNo('qualifies'),
    againstToolId: text('against_tool_id'),
    calibration: text('calibration', { mode: 'json' }).$type<Calibration>(),
    file: text('file', { mode: 'json' }).$type<GaugeEvidence['file']>(),
  },
  (table) => [primaryKey({ columns: [table.toolId, table.no] })],
);

/** How long a calibration is good for, and the knock that is not yet cleared. A gauge with neither has no row. */
export const gauge = sqliteTable('gauge', {
  toolId: text('tool_id').primaryKey().notNull(),
  intervalDays: integer('interval_days'),
  intervalEnds: integer('interval_ends'),
  intervalMethod: text('interval_method').$type<IntervalMethod>(),
  droppedOnDay: text('dropped_on_day'),
  droppedAtMs: integer('dropped_at_ms'),
});

/** A file kept by the hash of its bytes. Content beside the ledger: entries name the hash. */
export const attachment = sqliteTable('attachment', {
  sha256: text('sha256').primaryKey().notNull(),
  type: text('type').$type<CertificateType>().notNull(),
  data: blob('data', { mode: 'buffer' }).notNull(),
});
