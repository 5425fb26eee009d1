import { buyPlan } from '../lot-size/buy-plan';
import { orderableQuantity, purchaseCost } from '../lot-size/purchase-cost';
import { newOrderDays } from '../outlook/order-arrivals';
import type { ShopFacts } from '../outlook/shop-facts';
import type { Costs } from '../shop/costs';
import { inTime, orderByInDays, stoppedDays } from './order-by';
import { piecesToSuffice } from './part-need';
import type { PartOffer } from './part-offers';
import type { PartOutlook } from './part-outlook';

/** One way to buy what is needed: how many now, for how much, by when, and how surely it comes in time. */
export interface BuyingWay {
  readonly offer: PartOffer;
  readonly quantity: number;
  /** Purchase of this order, minor units; null where no price is written down. */
  readonly priceMinor: number | null;
  /** Days from today; null where no lead time is written down. May have passed. */
  readonly orderByInDays: number | null;
  /** Chance that it comes in time when ordered today; null without a lead time. */
  readonly inTimeToday: number | null;
  /** Days of work standing still on average: ordered today, and only ordered when the last piece is gone. */
  readonly stoppedDaysToday: number | null;
  readonly stoppedDaysWhenOut: number | null;
  /** What a week of waiting adds, days of work standing still. */
  readonly stoppedDaysPerWeek: number | null;
}

const WEEK_DAYS = 7;

/**
 * The first order under an offer: the needs at the shop's service level, week by week, put into lots of least cost with the
 * offer's price breaks, packs and least quantity; and its days with the lead times that the supplier achieved.
 */
export function buyUnder(offer: PartOffer, outlook: PartOutlook, facts: ShopFacts, costs: Costs): BuyingWay {
  const quantity = firstLot(offer, outlook, costs);
  const priceMinor = offer.priceMinor === null ? null : purchaseCost(offer.terms, quantity);
  const needDays = outlook.total.needDays[outlook.drafted];
  if (offer.leadTimeDays === null || needDays === undefined)
    return { offer, quantity, priceMinor, ...UNKNOWN_DAYS };
  const { supplier, leadTimeDays } = offer;
  const { drawCount } = outlook.total;
  const leadDays = newOrderDays(facts, { partId: outlook.part.id, supplier, leadTimeDays }, drawCount);
  const within = needDays.map((day) => (day <= outlook.horizonDays ? day : Number.POSITIVE_INFINITY));
  const timing = { needDays: within, leadDays };
  const stoppedDaysToday = stoppedDays(timing, 0);
  return {
    ...{ offer, quantity, priceMinor },
    orderByInDays: orderByInDays(timing, outlook.service),
    inTimeToday: inTime(timing, 0),
    stoppedDaysToday,
    stoppedDaysWhenOut: stoppedDays(timing, 'when-out'),
    stoppedDaysPerWeek: stoppedDays(timing, WEEK_DAYS) - stoppedDaysToday,
  };
}

const UNKNOWN_DAYS = {
  orderByInDays: null,
  inTimeToday: null,
  stoppedDaysToday: null,
  stoppedDaysWhenOut: null,
  stoppedDaysPerWeek: null,
} as const;

function firstLot({ terms, priceMinor }: PartOffer, outlook: PartOutlook, costs: Costs): number {
  const demand = weeklyNeed(outlook);
  const needed = demand.reduce((sum, pieces) => sum + pieces, 0);
  if (needed === 0) return 0;
  if (priceMinor === null) return orderableQuantity(terms, needed);
  const plan = buyPlan({
    demand,
    terms,
    orderCost: costs.orderMinor,
    holdingCost: (costs.holdingPerYear * priceMinor * WEEK_DAYS) / 365,
  });
  return plan.quantities.find((quantity) => quantity > 0) ?? 0;
}

/** Pieces that must be there for each week at the service level, beyond those drafted already. */
export function weeklyNeed({ total, horizonDays, service, drafted }: PartOutlook): number[] {
  const weeks = Math.max(1, Math.ceil(horizonDays / WEEK_DAYS));
  let had = drafted;
  return Array.from({ length: weeks }, (_, week) => {
    const until = Math.min(horizonDays, (week + 1) * WEEK_DAYS);
    const level = Math.max(had, piecesToSuffice(total, until, service));
    const more = level - had;
    had = level;
    return more;
  });
}
