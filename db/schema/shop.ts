import { real, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import type { ReadingSettings } from '../../lib/reading/reading-settings';
import type { AcceptanceRule } from '../../lib/shop/acceptance-rule';
import type { Costs } from '../../lib/shop/costs';
import type { GaugeSettings } from '../../lib/shop/gauge-settings';
import type { PersonRole } from '../../lib/shop/noun';

/** One row: the shop's own settings. */
export const shop = sqliteTable('shop', {
  id: text('id').$type<'shop'>().primaryKey().notNull(),
  name: text('name').notNull(),
  units: text('units').$type<'in' | 'mm'>().notNull(),
  currency: text('currency').notNull(),
  requiredProbability: real('required_probability').notNull(),
  requiredProbabilityPrecious: real('required_probability_precious').notNull(),
  fluidWasteFactor: real('fluid_waste_factor').notNull(),
  /** The rule for ends of every job that has none of its own, where the shop has one. */
  acceptanceRule: text('acceptance_rule', { mode: 'json' }).$type<AcceptanceRule>(),
});

/** One row: what things cost the shop, where it has said so. */
export const shopCosts = sqliteTable('shop_costs', {
  id: text('id').$type<'costs'>().primaryKey().notNull(),
  data: text('data', { mode: 'json' }).$type<Costs>().notNull(),
});

/** The people whose names can be chosen. */
export const person = sqliteTable('person', {
  id: text('id').primaryKey().notNull(),
  name: text('name').notNull(),
  role: text('role').$type<PersonRole>().notNull(),
});

/** How the shop turns what it sees of an edge into a share of its life. */
export const readingSettings = sqliteTable('reading_settings', {
  id: text('id').$type<'reading-settings'>().primaryKey().notNull(),
  data: text('data', { mode: 'json' }).$type<ReadingSettings>().notNull(),
});

/** How the shop judges its gauges. */
export const gaugeSettings = sqliteTable('gauge_settings', {
  id: text('id').$type<'gauge-settings'>().primaryKey().notNull(),
  data: text('data', { mode: 'json' }).$type<GaugeSettings>().notNull(),
});
