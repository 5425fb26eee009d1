import type { Database } from 'better-sqlite3';
import { invariant } from '../../lib/invariant';
import type { Entry, SubjectKind } from '../../lib/ledger/event';
import type { RecordOf } from '../../lib/ledger/fold';
import { saveAcceptance, saveRecall } from './save-acceptance';
import { saveFluidLot } from './save-fluid-lot';
import { saveJob, saveOrder } from './save-job';
import { saveConflict, saveCount, saveKit } from './save-kit';
import {
  saveBelief,
  saveConnection,
  saveCosts,
  saveGaugeSettings,
  saveGuess,
  saveMaterial,
  savePart,
  savePerson,
  saveReadingSettings,
  saveShop,
} from './save-shop';
import { saveTool } from './save-tool';
import { bit, clear, insert, statement } from './statements';

type Save = { [S in SubjectKind]: (client: Database, id: string, record: RecordOf[S]) => void };

const SAVE: Save = {
  shop: saveShop,
  person: savePerson,
  connection: saveConnection,
  material: saveMaterial,
  part: savePart,
  guess: saveGuess,
  belief: saveBelief,
  costs: saveCosts,
  'reading-settings': saveReadingSettings,
  'gauge-settings': saveGaugeSettings,
  'fluid-lot': saveFluidLot,
  job: saveJob,
  order: saveOrder,
  kit: saveKit,
  conflict: saveConflict,
  count: saveCount,
  tool: saveTool,
  acceptance: saveAcceptance,
  recall: saveRecall,
};

/** The tables a kind of subject lives in, dependants first, with the column that holds its ID. */
const TABLES: Record<SubjectKind, readonly (readonly [table: string, column: string])[]> = {
  shop: [['shop', 'id']],
  person: [['person', 'id']],
  connection: [['connection', 'id']],
  material: [['material', 'id']],
  part: [
    ['part_fit', 'part_id'],
    ['part_permit', 'part_id'],
    ['part', 'id'],
  ],
  guess: [['life_guess', 'part_id']],
  belief: [['life_belief', 'kind']],
  costs: [['shop_costs', 'id']],
  'reading-settings': [['reading_settings', 'id']],
  'gauge-settings': [['gauge_settings', 'id']],
  'fluid-lot': [['fluid_lot', 'id']],
  job: [
    ['job_line', 'job_id'],
    ['job', 'id'],
  ],
  order: [['purchase_order', 'id']],
  kit: [['kit', 'id']],
  conflict: [['conflict', 'id']],
  count: [['stock_count', 'id']],
  tool: [
    ['edge_use', 'tool_id'],
    ['edge', 'tool_id'],
    ['gauge_evidence', 'tool_id'],
    ['gauge', 'tool_id'],
    ['tool', 'id'],
  ],
  acceptance: [
    ['acceptance_gauge', 'acceptance_id'],
    ['acceptance_mark', 'acceptance_id'],
    ['acceptance', 'id'],
  ],
  recall: [
    ['recall_suspect', 'recall_id'],
    ['recall', 'id'],
  ],
};

/** Records are saved in the order in which their tables refer to each other. */
export const SAVE_ORDER: readonly SubjectKind[] = [
  'shop',
  'person',
  'connection',
  'material',
  'part',
  'guess',
  'belief',
  'costs',
  'reading-settings',
  'gauge-settings',
  'fluid-lot',
  'job',
  'order',
  'kit',
  'conflict',
  'count',
  'tool',
  'acceptance',
  'recall',
];

/** Writes a subject's record into its tables; a subject without entries left has no row. */
export function saveRecord(
  client: Database,
  kind: SubjectKind,
  id: string,
  record: RecordOf[SubjectKind] | undefined,
): void {
  if (record === undefined) {
    for (const [table, column] of TABLES[kind]) clear(client, table, column, id);
    return;
  }
  SAVE[kind](client, id, record as never);
}

/** Empties every kept table, dependants first. */
export function clearAll(client: Database): void {
  client.exec('DELETE FROM cut');
  for (const kind of [...SAVE_ORDER].reverse())
    for (const [table] of TABLES[kind]) client.exec(`DELETE FROM ${table}`);
}

/** Writes one row of the cut log. */
export function saveCut(client: Database, entry: Entry): void {
  invariant(entry.kind === 'cut-logged', 'saveCut takes a cut-logged entry');
  const { payload: cut } = entry;
  insert(client, 'cut', {
    entry_id: entry.id,
    seq: entry.seq,
    tool_id: entry.subjectId,
    operation: cut.operation,
    connection_id: cut.connectionId,
    material_id: cut.materialId,
    heat: cut.heat,
    ends: cut.ends,
    good_ends: cut.goodEnds,
    thread_length_mm: cut.threadLengthMm,
    dry: bit(cut.dry),
    rework: bit(cut.rework),
    fluid_id: cut.fluidId ?? null,
    job_line_id: cut.jobLineId,
    person_id: entry.actorId,
    cut_at_ms: cut.cutAtMs,
    exposure_micro: cut.exposureMicro,
    reversed: 0,
  });
}

/** Marks a row of the cut log as taken back. */
export function markReversed(client: Database, entryId: string): void {
  statement(client, 'UPDATE cut SET reversed = 1 WHERE entry_id = ?').run(entryId);
}
