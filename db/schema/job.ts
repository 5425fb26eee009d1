import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import type { OrderStatus } from '../../lib/ledger/order-history';
import type { AcceptanceRule } from '../../lib/shop/acceptance-rule';
import type { LineCleaned } from '../../lib/shop/cleaning';
import type { Duty } from '../../lib/shop/duty';
import type { OrderShown } from '../../lib/shop/order';
import { yesNo } from './columns';

/** A job: open until it is done or cancelled. */
export const job = sqliteTable('job', {
  id: text('id').primaryKey().notNull(),
  title: text('title').notNull(),
  status: text('status').$type<'open' | 'done' | 'cancelled'>().notNull(),
  /** The rule its ends must meet, where the job has one of its own. */
  acceptanceRule: text('acceptance_rule', { mode: 'json' }).$type<AcceptanceRule>(),
  shippedOnDay: text('shipped_on_day'),
});

/** One line of a job: so many ends of one connection in one material, between two days. */
export const jobLine = sqliteTable('job_line', {
  id: text('id').primaryKey().notNull(),
  jobId: text('job_id').notNull(),
  lineNo: integer('line_no').notNull(),
  connectionId: text('connection_id').notNull(),
  materialId: text('material_id').notNull(),
  heat: text('heat').notNull(),
  ends: integer('ends').notNull(),
  cone: yesNo('cone'),
  thread: yesNo('thread'),
  assemble: yesNo('assemble'),
  startOnDay: text('start_on_day').notNull(),
  dueOnDay: text('due_on_day').notNull(),
  value: text('value').$type<'ordinary' | 'precious'>().notNull(),
  duty: text('duty').$type<Duty>().notNull(),
  cleaning: text('cleaning', { mode: 'json' }).$type<LineCleaned>(),
});

/** An order to a supplier. The promised day stays as it was given; the expected day moves when it slips. */
export const purchaseOrder = sqliteTable('purchase_order', {
  id: text('id').primaryKey().notNull(),
  partId: text('part_id').notNull(),
  quantity: integer('quantity').notNull(),
  receivedQuantity: integer('received_quantity').notNull(),
  placedOnDay: text('placed_on_day').notNull(),
  promisedOnDay: text('promised_on_day').notNull(),
  expectedOnDay: text('expected_on_day').notNull(),
  status: text('status').$type<OrderStatus>().notNull(),
  supplier: text('supplier').notNull(),
  unitPriceMinor: integer('unit_price_minor'),
  statedOnDay: text('stated_on_day').notNull(),
  firstReceivedOnDay: text('first_received_on_day'),
  receivedOnDay: text('received_on_day'),
  chasedOnDay: text('chased_on_day'),
  why: text('why').notNull(),
  shown: text('shown', { mode: 'json' }).$type<OrderShown>(),
});
