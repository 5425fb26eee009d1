import type { Permit } from '../../lib/access/permit';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import type { ApproveOrders, DraftOrders } from '../../lib/shop/order-input';
import { checkBatch } from '../ledger/batch';
import { derivedId } from '../ledger/derived-id';
import type { Env } from '../ledger/ledger';
import { write } from '../ledger/write';
import type { Db } from '../open';

/** How many were written, under which entry the first of them stands. */
export interface Written {
  readonly id: string;
  readonly count: number;
}

/** Writes down the orders that somebody proposes, all of them or none. */
export function draftOrders(
  db: Db,
  permit: Permit<'keep-orders'>,
  input: DraftOrders,
  env: Env,
): Result<Written, Refusal> {
  const { entryId, deviceAtMs, reason, drafts } = input;
  if (drafts.length === 0) return refuse('nothing', 'Tick at least one part.');
  return write(db, permit, env, (ledger) => {
    const whole = checkBatch(db, (place) => derivedId(entryId, String(place)), drafts.length);
    if (!whole.ok) return whole;
    for (const [place, draft] of drafts.entries()) {
      if (ledger.find('part', draft.partId) === undefined)
        return refuse('unknown-part', 'Choose what is ordered.', 'partId');
      const id = derivedId(entryId, String(place));
      const entry = {
        id,
        deviceAtMs,
        reason,
        kind: 'order-drafted',
        subjectId: draft.id,
        payload: draft,
      } as const;
      const recorded = ledger.record(entry);
      if (!recorded.ok) return recorded;
    }
    return ok({ id: derivedId(entryId, '0'), count: drafts.length });
  });
}

/** A lead’s yes to drafts, each with the quantity that the lead settled on; all of them or none. */
export function approveOrders(
  db: Db,
  permit: Permit<'approve-orders'>,
  input: ApproveOrders,
  env: Env,
): Result<Written, Refusal> {
  const { entryId, deviceAtMs, reason, orders } = input;
  if (orders.length === 0) return refuse('nothing', 'Tick at least one draft.');
  const { role, name } = permit.actor;
  if (role !== 'lead' && role !== 'set-up')
    return refuse(
      'not-lead',
      `A lead approves orders; ${name} is none. Ask a lead, or choose the lead’s name.`,
    );
  return write(db, permit, env, (ledger) => {
    const whole = checkBatch(db, (place) => derivedId(entryId, String(place)), orders.length);
    if (!whole.ok) return whole;
    for (const [place, { id: orderId, quantity }] of orders.entries()) {
      const id = derivedId(entryId, String(place));
      const entry = {
        id,
        deviceAtMs,
        reason,
        kind: 'order-approved',
        subjectId: orderId,
        payload: { quantity },
      } as const;
      const recorded = ledger.record(entry);
      if (!recorded.ok) return recorded;
    }
    return ok({ id: derivedId(entryId, '0'), count: orders.length });
  });
}
