import { integer, primaryKey, real, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import type { EdgeReading, EdgeUse, Reservation, ToolRecord } from '../../lib/ledger/tool-record';
import type { FluidDisposed } from '../../lib/shop/fluid-entry';
import type { Opening } from '../../lib/shop/noun';
import type { EdgeEnd, EndCause, Hand, Role, ToolState } from '../../lib/shop/vocabulary';
import { yesNo } from './columns';

/**
 * One marked thing. in-crib → issued → in-crib; any state → quarantined, calibration, regrind, lost, scrapped; scrapped
 * is final. Issued if and only if somebody holds it.
 */
export const tool = sqliteTable('tool', {
  id: text('id').primaryKey().notNull(),
  lookUpKey: text('look_up_key').notNull(),
  partId: text('part_id').notNull(),
  role: text('role').$type<Role>().notNull(),
  hand: text('hand').$type<Hand>(),
  lot: text('lot').notNull(),
  receivedOnDay: text('received_on_day').notNull(),
  opening: text('opening', { mode: 'json' }).$type<Opening>().notNull(),
  state: text('state').$type<ToolState>().notNull(),
  stateSinceMs: integer('state_since_ms').notNull(),
  stateReason: text('state_reason').notNull(),
  holderId: text('holder_id'),
  jobLineId: text('job_line_id'),
  bench: text('bench').notNull(),
  backOnDay: text('back_on_day'),
  dueOnDay: text('due_on_day'),
  expiresOnDay: text('expires_on_day'),
  openedOnDay: text('opened_on_day'),
  levelMl: real('level_ml'),
  extendedUntilDay: text('extended_until_day'),
  dropsPerMl: real('drops_per_ml'),
  disposal: text('disposal', { mode: 'json' }).$type<FluidDisposed>(),
  kitId: text('kit_id'),
  reservation: text('reservation', { mode: 'json' }).$type<Reservation>(),
  pieces: text('pieces').$type<ToolRecord['pieces']>().notNull(),
  adjustments: integer('adjustments').notNull(),
  firstOffOwed: yesNo('first_off_owed'),
});

/** One edge of a tool: how it ended, and the last row cut with it. */
export const edge = sqliteTable(
  'edge',
  {
    toolId: text('tool_id').notNull(),
    edgeNo: integer('edge_no').notNull(),
    end: text('end').$type<EdgeEnd>(),
    cause: text('cause').$type<EndCause>(),
    endedAtMs: integer('ended_at_ms'),
    lastUse: text('last_use', { mode: 'json' }).$type<EdgeUse>(),
    readings: text('readings', { mode: 'json' }).$type<readonly EdgeReading[]>().notNull(),
  },
  (table) => [primaryKey({ columns: [table.toolId, table.edgeNo] })],
);

/** What an edge has cut, summed by connection, material and condition. */
export const edgeUse = sqliteTable(
  'edge_use',
  {
    toolId: text('tool_id').notNull(),
    edgeNo: integer('edge_no').notNull(),
    connectionId: text('connection_id').notNull(),
    materialId: text('material_id').notNull(),
    dry: yesNo('dry'),
    rework: yesNo('rework'),
    ends: integer('ends').notNull(),
    goodEnds: integer('good_ends').notNull(),
    exposureMicro: integer('exposure_micro').notNull(),
  },
  (table) => [
    primaryKey({
      columns: [table.toolId, table.edgeNo, table.connectionId, table.materialId, table.dry, table.rework],
    }),
  ],
);
