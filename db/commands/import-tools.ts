import { toolDisagreement } from '../../lib/import/compare-tool';
import type { Identified } from '../../lib/import/read-rows';
import type { ToolRow } from '../../lib/import/read-tool-row';
import { resolveTool } from '../../lib/import/resolve-tool';
import { invariant } from '../../lib/invariant';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import type { Receipt } from '../../lib/shop/noun';
import { toolKey } from '../../lib/shop/tool-id';
import { derivedId } from '../ledger/derived-id';
import { findEntryRow } from '../ledger/entry-row';
import { shopDay } from '../ledger/ledger';
import { statement } from '../ledger/statements';
import type { ImportRun, Standing } from './import-run';
import { receiveInto } from './receive-tool';

/** Receives the tools of a file into the crib; those in the record already are compared and left as they are. */
export function importTools(run: ImportRun, rows: readonly Identified<ToolRow>[]): void {
  const rowOf = new Map<string, number>();
  for (const { row, entryId } of rows) {
    const key = toolKey(row.toolId);
    const before = rowOf.get(key);
    if (before !== undefined) {
      run.fault(
        row.rowNo,
        'tool_id',
        `${row.toolId} stands in row ${before} already, or reads like the ID there.`,
      );
      continue;
    }
    rowOf.set(key, row.rowNo);
    const knownId = run.toolIds.get(key);
    const done = knownId === undefined ? receive(run, row, entryId) : compareKnown(run, row, knownId);
    if (done.ok) run.settle(row.rowNo, done.value);
    else run.refuse(row.rowNo, done.refusal, 'tool_id');
  }
}

function compareKnown(run: ImportRun, row: ToolRow, knownId: string): Result<Standing, Refusal> {
  if (knownId !== row.toolId)
    return refuse(
      'clash',
      `${row.toolId} reads like ${knownId}, which is in the record (O and 0, I and 1 count as one).`,
      'tool_id',
    );
  const now = run.ledger.find('tool', knownId);
  const sql = `SELECT payload FROM entry WHERE subject_kind = 'tool' AND subject_id = ? AND kind = 'tool-received'
    ORDER BY seq DESC LIMIT 1`;
  const kept = statement(run.db.$client, sql).get(knownId) as { payload: string } | undefined;
  invariant(now !== undefined && kept !== undefined, 'a tool in its table has a receipt in the ledger');
  const receipt = JSON.parse(kept.payload) as Receipt;
  const refusal = toolDisagreement(run.index, row, { receipt, now });
  return refusal === undefined ? ok('already-there') : { ok: false, refusal };
}

function receive(run: ImportRun, row: ToolRow, entryId: string): Result<Standing, Refusal> {
  const { nowMs } = run.env;
  if (findEntryRow(run.db.$client, entryId) !== undefined) {
    const sentence = `${row.toolId} was imported before and taken back since; it stays out.`;
    run.remarks.push({ rowNo: row.rowNo, sentence });
    return ok('already-there');
  }
  const receipt = resolveTool(run.index, row, shopDay(run.env));
  if (!receipt.ok) return receipt;
  const input = { ...receipt.value, entryId, deviceAtMs: nowMs, reason: row.note };
  const received = receiveInto(run.db, run.ledger, input);
  return received.ok ? place(run, row, entryId) : received;
}

/** Puts a tool just received where the file says that it is. */
function place(run: ImportRun, row: ToolRow, entryId: string): Result<Standing, Refusal> {
  if (row.state === null || row.state === 'in-crib') return ok('new');
  if (row.state === 'issued')
    return refuse(
      'issued',
      `${row.toolId} cannot come in as issued. Write in the crib, and issue it to its person afterwards.`,
      'state',
    );
  const moved = run.ledger.record({
    id: derivedId(entryId, 'state'),
    kind: 'tool-moved',
    subjectId: row.toolId,
    deviceAtMs: run.env.nowMs,
    reason: row.note === '' ? 'as the imported file says' : row.note,
    payload: { to: row.state, backOnDay: null },
  });
  return moved.ok ? ok('new') : moved;
}
