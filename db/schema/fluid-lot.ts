import { sqliteTable, text } from 'drizzle-orm/sqlite-core';
import type { FluidLot } from '../../lib/shop/fluid-lot';

/** What is known of one lot of a fluid: its sheet, its label, the supplier's answer. */
export const fluidLot = sqliteTable('fluid_lot', {
  id: text('id').primaryKey().notNull(),
  partId: text('part_id').notNull(),
  lot: text('lot').notNull(),
  data: text('data', { mode: 'json' }).$type<FluidLot>().notNull(),
});
