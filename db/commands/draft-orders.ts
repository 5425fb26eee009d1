import type { Permit } from '../../lib/access/permit';
import type { Entry } from '../../lib/ledger/event';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import type { ApproveOrders, DraftOrders } from '../../lib/shop/order-input';
import { checkBatch } from '../ledger/batch';
import { derivedId } from '../ledger/derived-id';
import type { Env } from '../ledger/ledger';
import { holdsAll } from '../ledger/same-content';
import { write } from '../ledger/write';
import type { Db } from '../open';

/** How many were written, under which entry the first of them stands. */
export interface Written {
  readonly id: string;
  readonly count: number;
}

/**
 * Writes down the orders that somebody proposes, all of them or none. A second press is known by the parts and quantities
 * that were ticked: numbers, prices and reasons are worked out anew at every sending, when the first press may be in the
 * record already.
 */
export function draftOrders(
  db: Db,
  permit: Permit<'keep-orders'>,
  input: DraftOrders,
  env: Env,
): Result<Written, Refusal> {
  const { entryId, deviceAtMs, reason, drafts } = input;
  const asked = input.asked ?? drafts.map(({ partId, quantity }) => ({ partId, quantity }));
  if (asked.length === 0) return refuse('nothing', 'Tick at least one part.');
  return write(db, permit, env, (ledger) => {
    const whole = checkBatch(db, (place) => derivedId(entryId, String(place)), asked.length);
    if (!whole.ok) return whole;
    for (const [place, wanted] of asked.entries()) {
      const id = derivedId(entryId, String(place));
      const before = ledger.sentBefore(id, reason, (entry) => isDraftOf(entry, wanted));
      if (before?.ok) continue;
      if (before !== undefined) return before;
      const payload = drafts.find(({ partId }) => partId === wanted.partId);
      if (payload === undefined) return NOT_TO_ORDER;
      if (ledger.find('part', wanted.partId) === undefined)
        return refuse('unknown-part', 'Choose what is ordered.', 'partId');
      const about = { id, deviceAtMs, reason, subjectId: payload.id };
      const recorded = ledger.record({ ...about, kind: 'order-drafted', payload });
      if (!recorded.ok) return recorded;
    }
    return ok({ id: derivedId(entryId, '0'), count: asked.length });
  });
}

function isDraftOf(entry: Entry, wanted: { readonly partId: string; readonly quantity: number }): boolean {
  return entry.kind === 'order-drafted' && holdsAll(entry.payload, wanted);
}

const NOT_TO_ORDER = refuse(
  'not-to-order',
  'Something that was ticked is no longer to be ordered. Load this page again, and tick what is.',
);

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
