import type { Permit } from '../../lib/access/permit';
import { type Refusal, type Result, refuse } from '../../lib/result';
import type { PlaceOrder, SlipOrder } from '../../lib/shop/command-input';
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
    if (ledger.find('part', order.partId) === undefined)
      return refuse('unknown-part', 'Choose what is ordered.', 'partId');
    return ledger.record({
      id,
      deviceAtMs,
      reason,
      kind: 'order-placed',
      subjectId: order.id,
      payload: order,
    });
  });
}

/** Writes down that an order will come on another day than expected. */
export function slipOrder(
  db: Db,
  permit: Permit<'keep-orders'>,
  input: SlipOrder,
  env: Env,
): Result<Recorded, Refusal> {
  const { entryId: id, deviceAtMs, reason, orderId, expectedOnDay, onDay } = input;
  return write(db, permit, env, (ledger) =>
    ledger.record({
      id,
      deviceAtMs,
      reason,
      kind: 'order-slipped',
      subjectId: orderId,
      payload: { expectedOnDay, ...(onDay === undefined ? {} : { onDay }) },
    }),
  );
}
