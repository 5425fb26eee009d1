import { ok, type Refusal, type Result, refuse } from '../result';
import type { Order } from '../shop/order';
import type { Entry } from './event';

/** An order with what came of it. The promised day is kept: it judges the supplier. */
export interface OrderRecord extends Order {
  readonly promisedOnDay: string;
  readonly receivedQuantity: number;
}

/** One more entry in an order's history. */
export function evolveOrder(order: OrderRecord | undefined, entry: Entry): Result<OrderRecord, Refusal> {
  if (entry.kind === 'order-placed') {
    if (order !== undefined) return refuse('exists', `Order ${order.id} is already in the record.`);
    const { payload } = entry;
    if (payload.expectedOnDay < payload.placedOnDay)
      return refuse('expected', 'The expected day lies before the order day.', 'expectedOnDay');
    return ok({ ...payload, promisedOnDay: payload.expectedOnDay, receivedQuantity: 0 });
  }
  if (order === undefined) return refuse('unknown-order', `No order ${entry.subjectId} is in the record.`);
  if (order.receivedQuantity >= order.quantity)
    return refuse('received', `Order ${order.id} has already been received in full.`);
  if (entry.kind === 'order-slipped') {
    const { expectedOnDay } = entry.payload;
    if (expectedOnDay < order.placedOnDay)
      return refuse('expected', 'The expected day lies before the order day.', 'expectedOnDay');
    return ok({ ...order, expectedOnDay });
  }
  if (entry.kind !== 'order-received')
    return refuse('kind', `An entry "${entry.kind}" cannot be about an order.`);
  const receivedQuantity = order.receivedQuantity + entry.payload.quantity;
  if (receivedQuantity > order.quantity)
    return refuse(
      'quantity',
      `Order ${order.id} is for ${order.quantity}; ${receivedQuantity} would be too many.`,
    );
  return ok({ ...order, receivedQuantity });
}
