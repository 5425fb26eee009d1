import type { Permit } from '../../lib/access/permit';
import type { PayloadOf } from '../../lib/ledger/event';
import { type Refusal, type Result, refuse } from '../../lib/result';
import type { CorrectCut } from '../../lib/shop/command-input';
import type { Cut } from '../../lib/shop/cut';
import { toolKey } from '../../lib/shop/tool-id';
import { decideCut } from '../../lib/wear/decide-cut';
import { derivedId } from '../ledger/derived-id';
import { type EntryRow, entryOfRow, findEntryRow } from '../ledger/entry-row';
import type { Env, Ledger, Recorded } from '../ledger/ledger';
import { write } from '../ledger/write';
import type { Db } from '../open';
import { findToolId, unknownTool } from './tool-entry';

/**
 * Mends a row logged on the wrong tool: takes it back and logs it on the right one, in one transaction, each naming the
 * other. With no right tool it is only taken back.
 */
export function correctCut(
  db: Db,
  permit: Permit<'reverse-entry'>,
  input: CorrectCut,
  env: Env,
): Result<Recorded, Refusal> {
  const { targetId, rightToolId } = input;
  const correction = { ...input, reason: input.reason === '' ? 'logged on the wrong tool' : input.reason };
  return write(db, permit, env, (ledger) => {
    const row = findEntryRow(db.$client, targetId);
    if (row?.kind !== 'cut-logged')
      return refuse('unknown-entry', 'There is no such row of the cut log.', 'targetId');
    if (rightToolId === null) return ledger.reverse({ ...correction, id: input.entryId });
    return moveCut(db, ledger, row, { ...correction, rightToolId });
  });
}

function moveCut(
  db: Db,
  ledger: Ledger,
  row: EntryRow,
  correction: CorrectCut & { readonly rightToolId: string },
): Result<Recorded, Refusal> {
  const { entryId: id, targetId, deviceAtMs, reason, rightToolId } = correction;
  const before = ledger.sentBefore(
    id,
    reason,
    ({ kind, subjectId, payload }) =>
      kind === 'cut-logged' &&
      toolKey(subjectId) === toolKey(rightToolId) &&
      (payload as PayloadOf<'cut-logged'>).correctsId === targetId,
  );
  if (before !== undefined) return before;
  const toolId = findToolId(db, rightToolId);
  if (toolId === undefined) return unknownTool(rightToolId, 'rightToolId');
  if (toolId === row.subject_id)
    return refuse('same-tool', 'That is the tool it is logged on already.', 'rightToolId');
  const reversed = ledger.reverse({ id: derivedId(id, 'back'), targetId, deviceAtMs, reason });
  if (!reversed.ok) return reversed;
  const moved = movedCut(ledger, toolId, entryOfRow(row).payload as Cut, targetId);
  if (!moved.ok) return moved;
  return ledger.record({
    id,
    deviceAtMs,
    reason,
    kind: 'cut-logged',
    subjectId: toolId,
    payload: moved.value,
  });
}

/** The row as it would stand on the right tool: decided anew for that tool, with the length and cost it was logged with. */
function movedCut(ledger: Ledger, toolId: string, cut: Cut, correctsId: string): Result<Cut, Refusal> {
  const tool = ledger.find('tool', toolId);
  const decision = decideCut({
    input: { ...cut, toolId, threadLength: null, fluidId: cut.fluidId ?? null },
    cutAtMs: cut.cutAtMs,
    tool,
    part: tool && ledger.find('part', tool.partId),
    connection: ledger.find('connection', cut.connectionId),
    material: ledger.find('material', cut.materialId),
    fluid: cut.fluidId ? ledger.find('tool', cut.fluidId) : undefined,
    correctsId,
  });
  if (!decision.ok) return decision;
  if (decision.value.operation !== cut.operation) {
    return refuse(
      'operation',
      `${toolId} cannot have cut this: it was ${cut.operation === 'cone' ? 'coning' : 'threading'}.`,
      'rightToolId',
    );
  }
  const { threadLengthMm, threadLengthTyped, exposureMicro } = cut;
  return { ok: true, value: { ...decision.value, threadLengthMm, threadLengthTyped, exposureMicro } };
}
