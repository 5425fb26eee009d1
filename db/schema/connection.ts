import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import type { Hand, Service } from '../../lib/shop/vocabulary';
import { yesNo } from './columns';

/** A tube size and service with its thread and cone. Shipped rows are examples until the shop confirms them. */
export const connection = sqliteTable('connection', {
  id: text('id').primaryKey().notNull(),
  odNum: integer('od_num').notNull(),
  odDen: integer('od_den').notNull(),
  service: text('service').$type<Service>().notNull(),
  tpi: real('tpi').notNull(),
  hand: text('hand').$type<Hand>().notNull(),
  threadClass: text('thread_class').notNull(),
  threadLengthMm: real('thread_length_mm').notNull(),
  coneAngleDeg: real('cone_angle_deg').notNull(),
  noseMm: real('nose_mm').notNull(),
  notGoTurnsMax: real('not_go_turns_max'),
  confirmed: yesNo('confirmed'),
  inUse: yesNo('in_use'),
});

/** A tube material with its first-guess wear factor. */
export const material = sqliteTable('material', {
  id: text('id').primaryKey().notNull(),
  name: text('name').notNull(),
  condition: text('condition').notNull(),
  factor: real('factor').notNull(),
  factorGiveOrTake: real('factor_give_or_take').notNull(),
  isReference: yesNo('is_reference'),
});
