import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import type { CutOperation } from '../../lib/shop/vocabulary';
import { yesNo } from './columns';

/** One row of the cut log, as its entry says, with whether it was taken back. */
export const cut = sqliteTable('cut', {
  entryId: text('entry_id').primaryKey().notNull(),
  seq: integer('seq').notNull(),
  toolId: text('tool_id').notNull(),
  operation: text('operation').$type<CutOperation>().notNull(),
  connectionId: text('connection_id').notNull(),
  materialId: text('material_id').notNull(),
  heat: text('heat').notNull(),
  ends: integer('ends').notNull(),
  goodEnds: integer('good_ends').notNull(),
  threadLengthMm: real('thread_length_mm'),
  dry: yesNo('dry'),
  rework: yesNo('rework'),
  jobLineId: text('job_line_id'),
  personId: text('person_id').notNull(),
  cutAtMs: integer('cut_at_ms').notNull(),
  exposureMicro: integer('exposure_micro').notNull(),
  reversed: yesNo('reversed'),
  fluidId: text('fluid_id'),
});
