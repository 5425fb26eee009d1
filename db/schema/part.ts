import { integer, primaryKey, real, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import type { Belief } from '../../lib/shop/belief';
import type { Duty } from '../../lib/shop/duty';
import type { BreakKind, Offer, PriceBreak } from '../../lib/shop/offer';
import type { EdgeKind, Hand, Role } from '../../lib/shop/vocabulary';
import { yesNo } from './columns';

/** A thing one can buy. */
export const part = sqliteTable('part', {
  id: text('id').primaryKey().notNull(),
  role: text('role').$type<Role>().notNull(),
  name: text('name').notNull(),
  designation: text('designation').notNull(),
  hand: text('hand').$type<Hand>(),
  adjustable: yesNo('adjustable'),
  matchedPair: yesNo('matched_pair'),
  regrindLimit: integer('regrind_limit').notNull(),
  supplier: text('supplier').notNull(),
  priceMinor: integer('price_minor'),
  leadTimeDays: integer('lead_time_days'),
  permitsAllMaterials: yesNo('permits_all_materials'),
  chlorinated: text('chlorinated').$type<'yes' | 'no' | 'unknown'>().notNull(),
  openedLifeDays: integer('opened_life_days'),
  dropsPerMl: real('drops_per_ml'),
  containerMl: real('container_ml'),
  packSize: integer('pack_size'),
  minQuantity: integer('min_quantity'),
  breakKind: text('break_kind').$type<BreakKind>(),
  priceBreaks: text('price_breaks', { mode: 'json' }).$type<PriceBreak[]>(),
  offers: text('offers', { mode: 'json' }).$type<Offer[]>(),
  shelfLifeDays: integer('shelf_life_days'),
  permittedDuties: text('permitted_duties', { mode: 'json' }).$type<Duty[]>().notNull(),
});

/** Which connections a part serves. A shared body serves several. */
export const partFit = sqliteTable(
  'part_fit',
  { partId: text('part_id').notNull(), connectionId: text('connection_id').notNull() },
  (table) => [primaryKey({ columns: [table.partId, table.connectionId] })],
);

/** Which materials a fluid may be used on, where it is not all of them. */
export const partPermit = sqliteTable(
  'part_permit',
  { partId: text('part_id').notNull(), materialId: text('material_id').notNull() },
  (table) => [primaryKey({ columns: [table.partId, table.materialId] })],
);

/** The first-guess life of a part in shop words: so many ends of one connection, give or take a factor. */
export const lifeGuess = sqliteTable('life_guess', {
  partId: text('part_id').primaryKey().notNull(),
  connectionId: text('connection_id').notNull(),
  ends: real('ends').notNull(),
  giveOrTake: real('give_or_take').notNull(),
});

/** What is believed of one kind of edge before the log speaks, as the shop set it. */
export const lifeBelief = sqliteTable('life_belief', {
  kind: text('kind').$type<EdgeKind>().primaryKey().notNull(),
  data: text('data', { mode: 'json' }).$type<Belief>().notNull(),
});
