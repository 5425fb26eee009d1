import type { Permit } from '../../lib/access/permit';
import type { Entry } from '../../lib/ledger/event';
import { decideReceipt } from '../../lib/receive/decide-receipt';
import { ok, type Refusal, type Result } from '../../lib/result';
import type { ReceiveTool } from '../../lib/shop/command-input';
import { tidyToolId, toolKey } from '../../lib/shop/tool-id';
import { derivedId } from '../ledger/derived-id';
import type { Env, Ledger, Recorded } from '../ledger/ledger';
import { holdsAll } from '../ledger/same-content';
import { statement } from '../ledger/statements';
import { write } from '../ledger/write';
import type { Db } from '../open';
import { toolDraft } from './tool-entry';

/**
 * Receives one tool into the crib, or into quarantine, against an order where there is one; both entries stand or fall
 * together. A piece of the wrong hand does not count for its order: that still waits for the right one.
 */
export function receiveTool(
  db: Db,
  permit: Permit<'receive-tool'>,
  input: ReceiveTool,
  env: Env,
): Result<Recorded, Refusal> {
  return write(db, permit, env, (ledger) => receiveInto(db, ledger, input));
}

/** The same inside a transaction already open: for set-up and import, which receive many. */
export function receiveInto(db: Db, ledger: Ledger, input: ReceiveTool): Result<Recorded, Refusal> {
  const { entryId, orderId, opening } = input;
  const toolId = tidyToolId(input.toolId);
  const before = ledger.sentBefore(entryId, input.reason, (entry) => isSameReceipt(entry, input));
  if (before !== undefined) return before;
  const decision = decideReceipt({
    input,
    toolId,
    part: ledger.find('part', input.partId),
    connection: opening.known === 'counted' ? ledger.find('connection', opening.connectionId) : undefined,
    material: opening.known === 'counted' ? ledger.find('material', opening.materialId) : undefined,
    order: orderId === null ? undefined : ledger.find('order', orderId),
    existingIds: idsLike(db, toolId),
  });
  if (!decision.ok) return decision;
  const recorded = ledger.record(
    toolDraft(input, toolId, { kind: 'tool-received', payload: decision.value }),
  );
  const isWrongHand = decision.value.hand !== ledger.find('part', input.partId)?.hand;
  if (!recorded.ok || orderId === null || isWrongHand) return recorded;
  const counted = ledger.record({
    id: derivedId(entryId, 'order'),
    kind: 'order-received',
    subjectId: orderId,
    deviceAtMs: input.deviceAtMs,
    reason: toolId,
    payload: { quantity: 1, onDay: input.receivedOnDay },
  });
  return counted.ok ? ok(recorded.value) : counted;
}

/** Tools whose ID reads like this one. */
function idsLike(db: Db, toolId: string): string[] {
  const rows = statement(db.$client, 'SELECT id FROM tool WHERE look_up_key = ?').all(toolKey(toolId));
  return (rows as { id: string }[]).map((row) => row.id);
}

function isSameReceipt(entry: Entry, input: ReceiveTool): boolean {
  if (entry.kind !== 'tool-received' || toolKey(entry.subjectId) !== toolKey(input.toolId)) return false;
  const { partId, hand, lot, receivedOnDay, opening, dueOnDay, expiresOnDay, openedOnDay, levelMl, orderId } =
    input;
  const sent = { partId, hand, lot, receivedOnDay, opening, dueOnDay, expiresOnDay, openedOnDay, levelMl };
  const certificate =
    input.certificate === 'missing' || input.certificate === 'wrong'
      ? { certificate: input.certificate }
      : {};
  return holdsAll(entry.payload, { ...sent, orderId, ...certificate });
}
