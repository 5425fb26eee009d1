import { addDays, type Day, daysBetween } from '../../calendar/day';
import { arrivalDayAt } from '../../capability/arrival-day';
import { laterDay } from '../../capability/line-order';
import { orderableQuantity, purchaseCost } from '../../lot-size/purchase-cost';
import { offersOf, type PartOffer } from '../../orders/part-offers';
import { newOrderDays } from '../../outlook/order-arrivals';
import { requiredProbability } from '../../outlook/plan-facts';
import { partsFor } from '../../outlook/ways-out';
import type { Part } from '../../shop/part';
import type { Role } from '../../shop/vocabulary';
import type { WayQuestion } from './ask-way';
import type { WayAction } from './priced-way';

export type Order = Extract<WayAction, { kind: 'order' }>;
export type Find = Extract<WayAction, { kind: 'find-part' }>;

/** By what an offer is chosen: the cheapest that is in time, else the soonest; the cheapest of all; the soonest of all. */
export type ChosenBy = 'in-time' | 'price' | 'day';

/** Whole days from today on which an offer taken today is there, per draw; undefined without a lead time. */
export function offerDays(
  { facts, ensemble }: Pick<WayQuestion, 'facts' | 'ensemble'>,
  part: Part,
  { supplier, leadTimeDays }: PartOffer,
): Int32Array | undefined {
  return leadTimeDays === null
    ? undefined
    : newOrderDays(facts, { partId: part.id, supplier, leadTimeDays }, ensemble.drawCount);
}

/**
 * The least order of a role placed today, with the offer chosen of all that suppliers make for it: by when to place it,
 * and by when it is there as surely as the line asks. Where the list of parts has none, that one is to be found.
 */
export function orderFor(question: WayQuestion, role: Role, by: ChosenBy = 'in-time'): Order | Find {
  const { facts, line } = question;
  const orders = partsFor(role, line, facts).flatMap((part) =>
    offersOf(part).map((offer) => leastOrder(question, part, offer)),
  );
  const start = laterDay(line.startOnDay, facts.today);
  const inTime = orders.filter(({ thereOnDay }) => thereOnDay !== null && thereOnDay <= start);
  const cheapest = [...(by === 'in-time' ? inTime : orders)].sort(byPrice);
  const soonest = [...orders].sort((a, b) => compareDays(a.thereOnDay, b.thereOnDay) || byPrice(a, b));
  return (by === 'day' ? undefined : cheapest[0]) ?? soonest[0] ?? { kind: 'find-part', role };
}

function leastOrder(question: WayQuestion, part: Part, offer: PartOffer): Order {
  const { facts, line } = question;
  const quantity = orderableQuantity(offer.terms, 1);
  const draws = offerDays(question, part, offer);
  const thereOnDay =
    draws === undefined
      ? null
      : arrivalDayAt(draws, requiredProbability(facts.shop, line.value), facts.today);
  const orderByDay =
    thereOnDay === null ? null : addDays(line.startOnDay, -daysBetween(facts.today, thereOnDay));
  return { kind: 'order', part, offer, quantity, orderByDay, thereOnDay };
}

/** By what the least of it costs; what has no price last. Of two alike, the sooner. */
function byPrice(a: Order, b: Order): number {
  const [mine, other] = [priceOf(a), priceOf(b)];
  return mine === other ? compareDays(a.thereOnDay, b.thereOnDay) : mine - other;
}

function priceOf({ offer, quantity }: Order): number {
  return offer.priceMinor === null ? Number.MAX_SAFE_INTEGER : purchaseCost(offer.terms, quantity);
}

/** No day stands last. */
function compareDays(a: Day | null, b: Day | null): number {
  if (a === b) return 0;
  return a === null || (b !== null && a > b) ? 1 : -1;
}
