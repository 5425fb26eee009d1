import type { Permit } from '../../lib/access/permit';
import { type Refusal, type Result, refuse } from '../../lib/result';
import type { PlaceOrder, SlipOrder } from '../../lib/shop/command-input';
import { dated } from '../ledger/dated';
import type { Env, Recorded } from '../ledger/ledger';
import { write } from '../ledger/write';
import type { Db } from '../open';

/** Writes down an order placed with a supplier. Its promised day is kept even when it slips. */
export function placeOrder(
  db: Db,
  permit: Permit<'keep-orders'>,
  input: PlaceOrder,
  env: Env,
): Result<Recorded, Refusal> {
  const { entryId: id, deviceAtMs, reason, order } = input;
  return write(db, permit, env, (ledger) => {
    const draft = {
      ...{ id, deviceAtMs, reason, subjectId: order.id },
      kind: 'order-placed',
      payload: order,
    } as const;
    const before = ledger.knows(draft);
    if (before !== undefined) return before;
    if (ledger.find('part', order.partId) === undefined)
      return refuse('unknown-part', 'Choose what is ordered.', 'partId');
    return ledger.record(draft);
  });
}

/** Writes down that an order will come on another day than expected, and when that was said: when it was entered, by default. */
export function slipOrder(
  db: Db,
  permit: Permit<'keep-orders'>,
  input: SlipOrder,
  env: Env,
): Result<Recorded, Refusal> {
  const { entryId: id, deviceAtMs, reason, orderId: subjectId, expectedOnDay } = input;
  const { payload, sent } = dated({ expectedOnDay }, input, env);
  return write(db, permit, env, (ledger) =>
    ledger.record({ id, deviceAtMs, reason, subjectId, kind: 'order-slipped', payload }, sent),
  );
}
