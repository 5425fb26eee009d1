import type { Permit } from '../../lib/access/permit';
import type { Refusal, Result } from '../../lib/result';
import type { CancelOrder, ChaseOrder } from '../../lib/shop/order-input';
import type { Env, Recorded } from '../ledger/ledger';
import { write } from '../ledger/write';
import type { Db } from '../open';

/** Writes down that a supplier was asked, with the day that was confirmed or none. The first promise is kept. */
export function chaseOrder(
  db: Db,
  permit: Permit<'keep-orders'>,
  input: ChaseOrder,
  env: Env,
): Result<Recorded, Refusal> {
  const { entryId: id, deviceAtMs, reason, orderId, onDay, confirmedForDay } = input;
  return write(db, permit, env, (ledger) =>
    ledger.record({
      ...{ id, deviceAtMs, reason, subjectId: orderId },
      kind: 'order-chased',
      payload: { onDay, confirmedForDay },
    }),
  );
}

/** Writes down that an order, or the rest of it, will not come. A draft is put aside the same way. */
export function cancelOrder(
  db: Db,
  permit: Permit<'keep-orders'>,
  input: CancelOrder,
  env: Env,
): Result<Recorded, Refusal> {
  const { entryId: id, deviceAtMs, reason, orderId, onDay } = input;
  return write(db, permit, env, (ledger) =>
    ledger.record({
      id,
      deviceAtMs,
      reason,
      kind: 'order-cancelled',
      subjectId: orderId,
      payload: { onDay },
    }),
  );
}
