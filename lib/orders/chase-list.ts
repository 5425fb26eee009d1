import { addDays, type Day, daysBetween } from '../calendar/day';
import type { LifeDraws } from '../ensemble/life-draws';
import { orderArrivalDays, supplierOf } from '../outlook/order-arrivals';
import type { OrderFacts, ShopFacts } from '../outlook/shop-facts';
import type { Part } from '../shop/part';
import { compareText } from '../text/compare-text';
import { type EdgeNeed, edgeNeeds } from './edge-need';
import { needOf } from './order-by';

/** Why an order is to be asked after: it is late, its day is near and nobody has confirmed it, or a line waits for it. */
export type ChaseReason = 'late' | 'due-soon' | 'line-waits';

/** An open order as the one who chases it wants to see it. */
export interface ChasedOrder {
  readonly order: OrderFacts;
  readonly part: Part;
  readonly supplier: string;
  /** Days past the day expected; negative before it. */
  readonly lateDays: number;
  /** First day on which it can be used: nine in ten later than the first, one in two, one in ten later than the last. */
  readonly usable: { readonly early: Day; readonly median: Day; readonly late: Day } | null;
  /** Lines that stop, in how many of the futures, because it is not there in time; the middle day of that. */
  readonly waiting: readonly {
    readonly lineId: string;
    readonly probability: number;
    readonly onDay: Day | null;
  }[];
  /** Null: nothing to ask. */
  readonly reason: ChaseReason | null;
}

const DUE_SOON_DAYS = 7;
/** Nobody is asked twice within so many days. */
const ASKED_DAYS = 5;
const WAITS = 0.1;

/** The open orders, those to be asked after first: late ones, then those that lines wait for, then those due soon. */
export function chaseList(facts: ShopFacts, ensemble: LifeDraws): ChasedOrder[] {
  const waits = waitingByPart(facts, ensemble);
  const list = facts.orders.flatMap((order): ChasedOrder[] => {
    const part = facts.parts.find(({ id }) => id === order.partId);
    return part === undefined ? [] : [chased(order, part, facts, waits.get(part.id) ?? [])];
  });
  const rank = ({ reason }: ChasedOrder) =>
    reason === null ? 3 : ['late', 'line-waits', 'due-soon'].indexOf(reason);
  return list.sort((a, b) => rank(a) - rank(b) || compareText(keyOf(a), keyOf(b)));
}

/** The day expected, then the number: of two of a day always the same one first. */
function keyOf({ order }: ChasedOrder): string {
  return `${order.expectedOnDay} ${order.id}`;
}

function chased(
  order: OrderFacts,
  part: Part,
  facts: ShopFacts,
  waiting: ChasedOrder['waiting'],
): ChasedOrder {
  const lateDays = daysBetween(order.expectedOnDay, facts.today);
  const days = orderArrivalDays(facts, order, part)?.sort();
  const at = (p: number) => addDays(facts.today, days?.[Math.floor(p * (days.length - 1))] ?? 0);
  return {
    ...{ order, part, lateDays, waiting },
    supplier: supplierOf(order, part),
    usable: days === undefined ? null : { early: at(0.1), median: at(0.5), late: at(0.9) },
    reason: reasonOf(order, lateDays, waiting, facts.today),
  };
}

function reasonOf(
  { chasedOnDay = null }: OrderFacts,
  lateDays: number,
  waiting: ChasedOrder['waiting'],
  today: Day,
): ChaseReason | null {
  const asked = chasedOnDay !== null && daysBetween(chasedOnDay, today) < ASKED_DAYS;
  if (lateDays > 0) return 'late';
  if (asked) return null;
  if (waiting.some(({ probability }) => probability >= WAITS)) return 'line-waits';
  return lateDays >= -DUE_SOON_DAYS ? 'due-soon' : null;
}

/**
 * Lines that run short of what is on order, by part: short on the drawn days of the orders, yet not if these were here. The
 * same futures both times, so the difference is the orders and nothing else.
 */
function waitingByPart(facts: ShopFacts, ensemble: LifeDraws): Map<string, ChasedOrder['waiting']> {
  const drawn = edgeNeeds(facts, ensemble, 'as-drawn');
  const here = edgeNeeds(facts, ensemble, 'as-here');
  const byPart = new Map<string, ChasedOrder['waiting']>();
  drawn.forEach((need, i) => {
    need.parts.forEach((part, p) => {
      byPart.set(part.id, waitingFor(need, here[i], p, facts.today));
    });
  });
  return byPart;
}

function waitingFor(
  drawn: EdgeNeed,
  here: EdgeNeed | undefined,
  p: number,
  today: Day,
): ChasedOrder['waiting'] {
  return drawn.lines.flatMap((line, i) => {
    if (line.part !== p) return [];
    const without = here?.walk.shortDays[i];
    const days = drawn.walk.shortDays[i]?.map((day, k) =>
      Number.isFinite(without?.[k] ?? 0) ? Number.POSITIVE_INFINITY : day,
    );
    if (days === undefined) return [];
    const { probability, medianInDays } = needOf(days);
    const onDay = medianInDays === null ? null : addDays(today, medianInDays);
    return probability >= 0.02 ? [{ lineId: line.lineId, probability, onDay }] : [];
  });
}
