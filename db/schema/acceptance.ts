import { integer, primaryKey, real, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import type { AcceptanceRecord } from '../../lib/ledger/acceptance-history';
import type { RecallRecord } from '../../lib/ledger/recall-history';
import type { CheckKind } from '../../lib/shop/acceptance';
import type { FaultDirection } from '../../lib/shop/recall';
import type { RejectCause, Role } from '../../lib/shop/vocabulary';
import { yesNo } from './columns';

/** Ends looked at together, with the same result. Accepted or refused; taken back with its entry. */
export const acceptance = sqliteTable('acceptance', {
  id: text('id').primaryKey().notNull(),
  jobLineId: text('job_line_id'),
  connectionId: text('connection_id').notNull(),
  materialId: text('material_id').notNull(),
  heat: text('heat').notNull(),
  firstEndNo: integer('first_end_no'),
  endCount: integer('end_count').notNull(),
  checkKind: text('check_kind').$type<CheckKind>().notNull(),
  decision: text('decision').$type<'accepted' | 'refused'>().notNull(),
  cause: text('cause').$type<RejectCause>(),
  gaugesComplete: yesNo('gauges_complete'),
  regaugesId: text('regauges_id'),
  personId: text('person_id').notNull(),
  gaugedAtMs: integer('gauged_at_ms').notNull(),
  gaugedOnDay: text('gauged_on_day').notNull(),
  recordedAtMs: integer('recorded_at_ms').notNull(),
  data: text('data', { mode: 'json' }).$type<AcceptanceRecord>().notNull(),
});

/** What each gauge said of them. */
export const acceptanceGauge = sqliteTable(
  'acceptance_gauge',
  {
    acceptanceId: text('acceptance_id').notNull(),
    position: integer('position').notNull(),
    toolId: text('tool_id').notNull(),
    role: text('role').$type<Role>().notNull(),
    verdict: text('verdict').$type<'pass' | 'fail' | 'not-used'>().notNull(),
    turns: real('turns'),
  },
  (table) => [primaryKey({ columns: [table.acceptanceId, table.position] })],
);

/** The marks that the ends bear. */
export const acceptanceMark = sqliteTable(
  'acceptance_mark',
  {
    acceptanceId: text('acceptance_id').notNull(),
    position: integer('position').notNull(),
    mark: text('mark').notNull(),
  },
  (table) => [primaryKey({ columns: [table.acceptanceId, table.position] })],
);

/** A gauge found out. open ⇄ closed: new evidence opens it again. */
export const recall = sqliteTable('recall', {
  id: text('id').primaryKey().notNull(),
  gaugeId: text('gauge_id').notNull(),
  status: text('status').$type<'open' | 'closed'>().notNull(),
  direction: text('direction').$type<FaultDirection>().notNull(),
  windowFromMs: integer('window_from_ms'),
  windowToMs: integer('window_to_ms').notNull(),
  openedAtMs: integer('opened_at_ms').notNull(),
  data: text('data', { mode: 'json' }).$type<RecallRecord>().notNull(),
});

/** The suspect ends of one acceptance in a recall, and what has been decided about them. */
export const recallSuspect = sqliteTable(
  'recall_suspect',
  {
    recallId: text('recall_id').notNull(),
    acceptanceId: text('acceptance_id').notNull(),
    endCount: integer('end_count').notNull(),
    openEnds: integer('open_ends').notNull(),
    goodEnds: integer('good_ends').notNull(),
    goneEnds: integer('gone_ends').notNull(),
  },
  (table) => [primaryKey({ columns: [table.recallId, table.acceptanceId] })],
);
