import { addDays, type Day } from '../../calendar/day';
import { arrivalDayAt } from '../../capability/arrival-day';
import { laterDay } from '../../capability/line-order';
import { orderableQuantity, purchaseCost } from '../../lot-size/purchase-cost';
import { requiredProbability } from '../../outlook/plan-facts';
import type { Part } from '../../shop/part';
import type { Role } from '../../shop/vocabulary';
import type { Change } from '../change';
import { pricedWay, type WayQuestion } from './ask-way';
import { datesFrom } from './date-ways';
import { type ChosenBy, type Find, type Order, offerDays, orderFor } from './order-offers';
import { type PricedWay, VERDICT_RANK, type WayAction } from './priced-way';

/** More edges than this are not proposed in one order. */
const EDGES_MAX = 6;
/** Shares of the draws by which all of it is there, beside the line's own: days on which a later start is tried. */
const SHARES = [0.95, 0.99] as const;

/**
 * Buying what is in the way, from the offers that serve the line best: the cheapest that is in time, else the soonest, and a
 * cheaper or a quicker one beside it where it buys something. Empty when nothing is there to buy.
 */
export function buyWays(question: WayQuestion, roles: readonly Role[]): PricedWay[] {
  const ways: PricedWay[] = [];
  const tried = new Set<string>();
  for (const by of ['in-time', 'price', 'day'] as const) {
    const found = roles.map((role) => orderFor(question, role, by));
    const key = JSON.stringify(
      found.map((one) => (one.kind === 'order' ? [one.part.id, one.offer] : one.role)),
    );
    const way = tried.has(key) ? undefined : buyWay(question, roles, by);
    tried.add(key);
    if (way !== undefined && !ways.some((kept) => isNoWorse(kept, way, question))) ways.push(way);
  }
  return ways;
}

/** As good an answer, as soon, for no more money. */
export function isNoWorse(a: PricedWay, b: PricedWay, question: WayQuestion): boolean {
  const cost = ({ costMinor }: PricedWay): number => costMinor ?? Number.MAX_SAFE_INTEGER;
  return (
    VERDICT_RANK[a.verdict] <= VERDICT_RANK[b.verdict] &&
    startIn(a, question) <= startIn(b, question) &&
    cost(a) <= cost(b)
  );
}

function startIn({ changes }: PricedWay, { line }: WayQuestion): Day {
  const moved = changes.find((change) => change.kind === 'change-dates');
  return moved?.kind === 'change-dates' ? moved.startOnDay : line.startOnDay;
}

/**
 * One of everything that is missing, and as few edges as make the line, in the packs and least quantities in which the supplier
 * sells it. It comes on the days drawn for such an order: nothing is here before. Where it all comes in time with the
 * certainty that the line asks for, on the line's own dates; else from a day on which the last of it is there.
 * What the list of parts does not hold is named, and no price is given; what has no lead time is not counted on.
 */
export function buyWay(
  question: WayQuestion,
  roles: readonly Role[],
  by: ChosenBy = 'in-time',
): PricedWay | undefined {
  const found = roles.map((role) => orderFor(question, role, by));
  if (found.length === 0) return undefined;
  const isDated = found.every((action) => action.kind === 'order' && action.thereOnDay !== null);
  const hasEdges = found.some((action) => action.kind === 'order' && isEdge(action.part));
  let best: PricedWay | undefined;
  for (const startOnDay of startDays(question, found)) {
    for (let edges = 1; edges <= (isDated && hasEdges ? EDGES_MAX : 1); edges++) {
      const actions = found.map((action) => withQuantity(action, edges, question));
      const changes = changesOf(question, actions, startOnDay);
      const way = pricedWay(question, { actions, changes, costMinor: costOf(question, actions) });
      if (way !== undefined && (best === undefined || isBetter(way, best))) best = way;
      if (way?.verdict === 'can-make') return way;
    }
  }
  return best;
}

function isBetter(a: PricedWay, b: PricedWay): boolean {
  return a.verdict === b.verdict ? a.pMade > b.pMade : VERDICT_RANK[a.verdict] < VERDICT_RANK[b.verdict];
}

/** The line's own start, or days by which all of it is there: as surely as the line asks, and surer, for lives take a share too. */
function startDays(question: WayQuestion, found: readonly (Order | Find)[]): Day[] {
  const { facts, line } = question;
  const start = laterDay(line.startOnDay, facts.today);
  const draws = found.flatMap((one) =>
    one.kind === 'order' ? (offerDays(question, one.part, one.offer) ?? []) : [],
  );
  const shares = [requiredProbability(facts.shop, line.value), ...SHARES];
  const days = shares.map((share) =>
    draws.reduce((day: Day, one) => laterDay(day, arrivalDayAt(one, share, facts.today) ?? day), start),
  );
  return [...new Set(days)].sort();
}

function withQuantity(action: Order | Find, edges: number, { verdict }: WayQuestion): Order | Find {
  if (action.kind !== 'order') return action;
  const { part, offer } = action;
  if (isEdge(part)) return { ...action, quantity: orderableQuantity(offer.terms, edges) };
  const short = verdict.blockers.find((blocker) => blocker.kind === 'fluid-short');
  if (part.role !== 'fluid' || short?.kind !== 'fluid-short' || !part.containerMl) return action;
  const containers = Math.ceil((short.needMl - short.haveMl) / part.containerMl);
  return { ...action, quantity: orderableQuantity(offer.terms, Math.max(1, containers)) };
}

function isEdge({ role }: Part): boolean {
  return role === 'die' || role === 'blade';
}

/** All of it ordered today with the lead time quoted, on the line's dates or from a later day. */
function changesOf(question: WayQuestion, actions: readonly WayAction[], startOnDay: Day): Change[] {
  const { today } = question.facts;
  const ordered = actions.flatMap((action): Change[] => {
    if (action.kind !== 'order' || action.offer.leadTimeDays === null) return [];
    const { supplier, leadTimeDays } = action.offer;
    const promisedOnDay = addDays(today, leadTimeDays);
    return [
      { kind: 'add-order', partId: action.part.id, quantity: action.quantity, promisedOnDay, supplier },
    ];
  });
  const isLater = startOnDay > laterDay(question.line.startOnDay, today);
  return isLater ? [...ordered, datesFrom(question, startOnDay)] : ordered;
}

/** The pieces, and placing an order with each supplier. */
function costOf({ facts }: WayQuestion, actions: readonly WayAction[]): number | null {
  let sum = 0;
  const suppliers = new Set<string>();
  for (const action of actions) {
    if (action.kind !== 'order' || action.offer.priceMinor === null) return null;
    sum += purchaseCost(action.offer.terms, action.quantity);
    suppliers.add(action.offer.supplier);
  }
  return sum + suppliers.size * (facts.costs?.orderMinor ?? 0);
}
