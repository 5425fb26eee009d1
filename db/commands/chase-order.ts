import type { Permit } from '../../lib/access/permit';
import type { Refusal, Result } from '../../lib/result';
import type { CancelOrder, ChaseOrder } from '../../lib/shop/order-input';
import { dated } from '../ledger/dated';
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
  const { entryId: id, deviceAtMs, reason, orderId: subjectId, confirmedForDay } = input;
  const { payload, sent } = dated({ confirmedForDay }, input, env);
  return write(db, permit, env, (ledger) =>
    ledger.record({ id, deviceAtMs, reason, subjectId, kind: 'order-chased', payload }, sent),
  );
}

/** Writes down that an order, or the rest of it, will not come. A draft is put aside the same way. */
export function cancelOrder(
  db: Db,
  permit: Permit<'keep-orders'>,
  input: CancelOrder,
  env: Env,
): Result<Recorded, Refusal> {
  const { entryId: id, deviceAtMs, reason, orderId: subjectId } = input;
  const { payload, sent } = dated({}, input, env);
  return write(db, permit, env, (ledger) =>
    ledger.record({ id, deviceAtMs, reason, subjectId, kind: 'order-cancelled', payload }, sent),
  );
}
