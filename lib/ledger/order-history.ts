import { ok, type Refusal, type Result, refuse } from '../result';
import type { Order, OrderShown } from '../shop/order';
import { entryDay } from './entry-day';
import type { Entry, PayloadOf } from './event';

/** Where an order stands: drafted → approved → placed → received in full; cancelled from any of the first three. */
export const ORDER_STATUSES = ['drafted', 'approved', 'placed', 'received', 'cancelled'] as const;
export type OrderStatus = (typeof ORDER_STATUSES)[number];

/** An order with what came of it. The promised day is kept: it judges the supplier. */
export interface OrderRecord extends Order {
  readonly status: OrderStatus;
  readonly supplier: string;
  readonly unitPriceMinor: number | null;
  readonly promisedOnDay: string;
  /** When the expected day was last said: placed, confirmed or slipped. */
  readonly statedOnDay: string;
  readonly receivedQuantity: number;
  readonly firstReceivedOnDay: string | null;
  /** When the last of it came. */
  readonly receivedOnDay: string | null;
  readonly chasedOnDay: string | null;
  readonly why: string;
  readonly shown?: OrderShown | undefined;
}

type Step = Result<OrderRecord, Refusal>;

/** One more entry in an order's history. */
export function evolveOrder(order: OrderRecord | undefined, entry: Entry): Step {
  if (entry.kind === 'order-drafted') return drafted(order, entry.payload);
  if (entry.kind === 'order-placed') return placed(order, entry.payload);
  if (order === undefined) return refuse('unknown-order', `No order ${entry.subjectId} is in the record.`);
  if (order.status === 'cancelled') return refuse('cancelled', `Order ${order.id} has been cancelled.`);
  if (order.status === 'received')
    return refuse('received', `Order ${order.id} has already been received in full.`);
  if (entry.kind === 'order-approved') return approved(order, entry.payload.quantity);
  if (entry.kind === 'order-cancelled') return ok({ ...order, status: 'cancelled' });
  if (entry.kind === 'order-slipped')
    return stated(order, entry.payload.expectedOnDay, entryDay(entry.payload, entry));
  if (entry.kind === 'order-chased') return chased(order, entry.payload);
  if (entry.kind === 'order-received')
    return received(order, entry.payload.quantity, entryDay(entry.payload, entry));
  return refuse('kind', `An entry "${entry.kind}" cannot be about an order.`);
}

function drafted(order: OrderRecord | undefined, draft: PayloadOf<'order-drafted'>): Step {
  if (order !== undefined) return refuse('exists', `Order ${order.id} is already in the record.`);
  const { draftedOnDay, leadTimeDays: _, ...rest } = draft;
  const days = { placedOnDay: draftedOnDay, expectedOnDay: draftedOnDay, promisedOnDay: draftedOnDay };
  return ok({ ...rest, ...days, ...NOTHING_CAME, status: 'drafted', statedOnDay: draftedOnDay });
}

const NOTHING_CAME = {
  receivedQuantity: 0,
  firstReceivedOnDay: null,
  receivedOnDay: null,
  chasedOnDay: null,
} as const;

function approved(order: OrderRecord, quantity: number): Step {
  if (order.status === 'placed') return refuse('placed', `Order ${order.id} has already been placed.`);
  return ok({ ...order, quantity, status: 'approved' });
}

/** An order is placed straight away, or once its draft is approved: for the part that was drafted. */
function placed(draft: OrderRecord | undefined, order: PayloadOf<'order-placed'>): Step {
  if (draft !== undefined) {
    const { id, status, partId } = draft;
    if (status === 'drafted') return refuse('not-approved', `Draft ${id} waits for a lead’s yes.`);
    if (status !== 'approved') return refuse('exists', `Order ${id} is already in the record.`);
    if (partId !== order.partId) return refuse('part', `Draft ${id} is for another part.`, 'partId');
  }
  if (order.expectedOnDay < order.placedOnDay)
    return refuse('expected', 'The expected day lies before the order day.', 'expectedOnDay');
  return ok({
    ...order,
    ...NOTHING_CAME,
    status: 'placed',
    supplier: order.supplier ?? draft?.supplier ?? '',
    unitPriceMinor: order.unitPriceMinor ?? draft?.unitPriceMinor ?? null,
    promisedOnDay: order.expectedOnDay,
    statedOnDay: order.placedOnDay,
    why: draft?.why ?? '',
    shown: order.shown ?? draft?.shown,
  });
}

function stated(order: OrderRecord, expectedOnDay: string, onDay: string): Step {
  if (order.status !== 'placed') return refuse('not-placed', `Order ${order.id} has not been placed yet.`);
  if (expectedOnDay < order.placedOnDay)
    return refuse('expected', 'The expected day lies before the order day.', 'expectedOnDay');
  return ok({ ...order, expectedOnDay, statedOnDay: onDay < order.placedOnDay ? order.placedOnDay : onDay });
}

function chased(order: OrderRecord, { onDay, confirmedForDay }: PayloadOf<'order-chased'>): Step {
  if (confirmedForDay !== null) {
    const confirmed = stated(order, confirmedForDay, onDay);
    return confirmed.ok ? ok({ ...confirmed.value, chasedOnDay: onDay }) : confirmed;
  }
  if (order.status !== 'placed') return refuse('not-placed', `Order ${order.id} has not been placed yet.`);
  return ok({ ...order, chasedOnDay: onDay });
}

function received(order: OrderRecord, quantity: number, onDay: string): Step {
  if (order.status !== 'placed') return refuse('not-placed', `Order ${order.id} has not been placed yet.`);
  const receivedQuantity = order.receivedQuantity + quantity;
  if (receivedQuantity > order.quantity)
    return refuse(
      'quantity',
      `Order ${order.id} is for ${order.quantity}; ${receivedQuantity} would be too many.`,
    );
  const inFull = receivedQuantity === order.quantity;
  return ok({
    ...order,
    receivedQuantity,
    status: inFull ? 'received' : 'placed',
    firstReceivedOnDay: order.firstReceivedOnDay ?? onDay,
    receivedOnDay: inFull ? onDay : null,
  });
}
