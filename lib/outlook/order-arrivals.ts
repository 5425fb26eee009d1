import { addDays, type Day } from '../calendar/day';
import { DEFAULT_DRAW_COUNT } from '../ensemble/build-ensemble';
import { arrivalDays } from '../lead-time/arrival-draws';
import type { LeadTimeBelief } from '../lead-time/lead-time-belief';
import { supplierBelief } from '../lead-time/supplier-record';
import type { Part } from '../shop/part';
import type { OrderFacts, ShopFacts } from './shop-facts';

/** Days from a delivery to the shelf: the receiving check. Common practice 1 to 2 days, no source. */
export const RECEIVING_DAYS = 1;

/** What is believed of a supplier's delays, from the orders that came in full. */
export function beliefOf(facts: Pick<ShopFacts, 'deliveries'>, supplier: string): LeadTimeBelief {
  return supplierBelief(facts.deliveries ?? [], supplier);
}

/** Who an order is placed with: as written down, or the part's supplier. */
export function supplierOf(order: Pick<OrderFacts, 'supplier'>, part: Pick<Part, 'supplier'>): string {
  return order.supplier === undefined || order.supplier === '' ? part.supplier : order.supplier;
}

/**
 * The day on which an open order can be used, per draw: whole days from today, the receiving check counted in, from what
 * its supplier achieved so far. Undefined where nobody wrote down when its day was said.
 */
export function orderArrivalDays(
  facts: Pick<ShopFacts, 'today' | 'deliveries'>,
  order: OrderFacts,
  part: Pick<Part, 'supplier'>,
  drawCount = DEFAULT_DRAW_COUNT,
): Int32Array | undefined {
  const { statedOnDay, expectedOnDay, id } = order;
  if (statedOnDay === undefined || statedOnDay === '') return undefined;
  return arrivalDays({
    key: order.luckKey ?? `order:${id}`,
    statedOnDay,
    expectedOnDay,
    today: facts.today,
    belief: beliefOf(facts, supplierOf(order, part)),
    receivingDays: RECEIVING_DAYS,
    drawCount,
  });
}

/** Names the luck of an order that might be placed. */
export function newOrderLuck({ partId, supplier }: { partId: string; supplier: string }): string {
  return `new-order:${partId}:${supplier}`;
}

/**
 * The same for an order that might be placed on a day, quoted for so many days: days from that day, per draw. The luck is
 * the part's and the supplier's own, whatever the day, so that a later order differs by its day and nothing else.
 */
export function newOrderDays(
  facts: Pick<ShopFacts, 'deliveries'>,
  offer: { readonly partId: string; readonly supplier: string; readonly leadTimeDays: number },
  drawCount = DEFAULT_DRAW_COUNT,
): Int32Array {
  const placed: Day = '2000-01-01';
  return arrivalDays({
    key: newOrderLuck(offer),
    statedOnDay: placed,
    expectedOnDay: addDays(placed, offer.leadTimeDays),
    today: placed,
    belief: beliefOf(facts, offer.supplier),
    receivingDays: RECEIVING_DAYS,
    drawCount,
  });
}
