import { addDays, type Day, daysBetween } from '../../calendar/day';
import { arrivalDayAt } from '../../capability/arrival-day';
import { laterDay } from '../../capability/line-order';
import { newOrderDays } from '../../outlook/order-arrivals';
import { requiredProbability } from '../../outlook/plan-facts';
import { partsFor } from '../../outlook/ways-out';
import type { Part } from '../../shop/part';
import type { Role } from '../../shop/vocabulary';
import type { Change } from '../change';
import { pricedWay, type WayQuestion } from './ask-way';
import { datesFrom } from './date-ways';
import type { PricedWay, WayAction } from './priced-way';

type Order = Extract<WayAction, { kind: 'order' }>;

/** More edges than this are not proposed in one order. */
const EDGES_MAX = 6;

/**
 * Buying what is in the way: one of everything that is missing, and as few edges as make the line. Where it all comes in
 * time with the certainty that the line asks for, on its own dates; else from the day on which the last of it is there.
 * What the list of parts does not hold is named, and no price is given. Undefined when nothing is there to buy.
 */
export function buyWay(question: WayQuestion, roles: readonly Role[]): PricedWay | undefined {
  const found = roles.map((role) => orderFor(question, role));
  if (found.length === 0) return undefined;
  let best: PricedWay | undefined;
  for (let edges = 1; edges <= EDGES_MAX; edges++) {
    const actions = found.map((action) => withQuantity(action, edges, question));
    best = pricedWay(question, {
      actions,
      changes: changesOf(question, actions),
      costMinor: costOf(question, actions),
    });
    const hasEdges = actions.some((action) => action.kind === 'order' && isEdge(action.part));
    if (best === undefined || best.verdict === 'can-make' || !hasEdges) return best;
  }
  return best;
}

/** One of a role ordered today: by when, and until when that would do. */
export function orderFor(
  question: WayQuestion,
  role: Role,
): Order | Extract<WayAction, { kind: 'find-part' }> {
  const { facts, line, ensemble } = question;
  const [part] = partsFor(role, line, facts).sort((a, b) => (a.priceMinor ?? 1e9) - (b.priceMinor ?? 1e9));
  if (part === undefined) return { kind: 'find-part', role };
  const { id: partId, supplier, leadTimeDays } = part;
  if (leadTimeDays === null) return { kind: 'order', part, quantity: 1, orderByDay: null, thereOnDay: null };
  const draws = newOrderDays(facts, { partId, supplier, leadTimeDays }, ensemble.drawCount);
  const thereOnDay = arrivalDayAt(draws, requiredProbability(facts.shop, line.value), facts.today);
  const orderByDay =
    thereOnDay === null ? null : addDays(line.startOnDay, -daysBetween(facts.today, thereOnDay));
  return { kind: 'order', part, quantity: 1, orderByDay, thereOnDay };
}

function withQuantity(
  action: ReturnType<typeof orderFor>,
  edges: number,
  { verdict }: WayQuestion,
): WayAction {
  if (action.kind !== 'order') return action;
  if (isEdge(action.part)) return { ...action, quantity: edges };
  const short = verdict.blockers.find((blocker) => blocker.kind === 'fluid-short');
  if (action.part.role !== 'fluid' || short?.kind !== 'fluid-short' || !action.part.containerMl)
    return action;
  const quantity = Math.ceil((short.needMl - short.haveMl) / action.part.containerMl);
  return { ...action, quantity: Math.max(1, quantity) };
}

function isEdge({ role }: Part): boolean {
  return role === 'die' || role === 'blade';
}

/** All of it here today, on the line's dates or from the day on which the last of it is there. */
function changesOf(question: WayQuestion, actions: readonly WayAction[]): Change[] {
  const orders = actions.filter((action): action is Order => action.kind === 'order');
  const bought = orders.map(
    ({ part, quantity }): Change => ({ kind: 'add-tool', partId: part.id, quantity }),
  );
  const startOnDay = startWith(question, orders);
  return startOnDay > question.line.startOnDay ? [...bought, datesFrom(question, startOnDay)] : bought;
}

function startWith({ line, facts }: WayQuestion, orders: readonly Order[]): Day {
  const start = laterDay(line.startOnDay, facts.today);
  return orders.reduce(
    (day, { thereOnDay }) => (thereOnDay === null ? day : laterDay(day, thereOnDay)),
    start,
  );
}

/** The pieces, and placing an order with each supplier. */
function costOf({ facts }: WayQuestion, actions: readonly WayAction[]): number | null {
  let sum = 0;
  const suppliers = new Set<string>();
  for (const action of actions) {
    if (action.kind !== 'order' || action.part.priceMinor === null) return null;
    sum += action.part.priceMinor * action.quantity;
    suppliers.add(action.part.supplier);
  }
  return sum + suppliers.size * (facts.costs?.orderMinor ?? 0);
}
