import { daysBetween } from '../calendar/day';
import { cutsLeftOf } from '../capability/cuts-left';
import { type QueuedLine, queueLines } from '../capability/line-order';
import type { Arrival, Fits, PlanLine, SetItem } from '../capability/plan-input';
import type { LifeDraws } from '../ensemble/life-draws';
import { newOrderDays } from '../outlook/order-arrivals';
import {
  demandOf,
  planArrivals,
  planConnections,
  planLines,
  referenceMaterialId,
  setItems,
} from '../outlook/plan-facts';
import type { ShopFacts } from '../outlook/shop-facts';
import type { Part } from '../shop/part';
import { EDGE_KINDS, type EdgeKind } from '../shop/vocabulary';
import { choosePart } from './choose-part';
import { type NeedLine, type NeedSource, type NeedWalk, walkNeed } from './need-walk';
import { offersOf } from './part-offers';
import { type RegrindSupply, regrindSupply, type WorthRegrinding } from './regrind-supply';

/** What one kind of edge is needed for: the plan's lines, the parts that would be bought for them, and the walk. */
export interface EdgeNeed {
  readonly kind: EdgeKind;
  readonly parts: readonly Part[];
  readonly lines: readonly NeedLine[];
  readonly sources: readonly NeedSource[];
  readonly walk: NeedWalk;
}

const OPERATION = { blade: 'cone', die: 'thread' } as const;

/**
 * When open orders count. 'as-drawn': on the days drawn for them, as in the plan check; what then runs short runs short.
 * 'as-here': as if they were here. 'where-buying-helps': on their drawn days where something ordered today could be there
 * sooner, else as if they were here: buying more would not shorten that wait, asking the supplier might.
 */
export type OrdersCount = 'as-drawn' | 'as-here' | 'where-buying-helps';

/**
 * How many new blades and dies the plan needs, of which part and when, from what is in hand and on its way: the same
 * futures as every other screen. Tools quarantined or out for calibration count for nothing until somebody decides. A
 * blade out for regrind is supply from the day it is expected back, with the life of a reground edge (the ensemble's, one
 * regrind further), and so lowers the blades to buy; without a day, or with one that has passed, it counts for nothing. A
 * regrind that nobody has sent away yet counts only where `worth` is given, as often as that says it pays: a worn blade goes out
 * today, another on the day on which the plan has used it up. The plan check counts none of them: sending one is a way out there.
 * `horizonDays`: what comes later is not in what is left over.
 */
export function edgeNeeds(
  facts: ShopFacts,
  ensemble: LifeDraws,
  orders: OrdersCount,
  horizonDays?: number,
  worth?: WorthRegrinding,
): EdgeNeed[] {
  const planned = planLines(facts).filter(({ endsToMake: ends }) => ends > 0);
  const lines = [...planned, ...paceLines(facts)];
  const queue = queueLines(lines, planConnections(facts), facts.today).filter(
    ({ hasTableRow }) => hasTableRow,
  );
  return EDGE_KINDS.map((kind) => edgeNeed(kind, queue, { facts, ensemble, orders, horizonDays, worth }));
}

/** Sizes cut of late, asked for nothing: so that what is left for work nobody has planned yet is known of them too. */
function paceLines(facts: ShopFacts): PlanLine[] {
  const settings = { dropsPerMl: undefined, wasteFactor: undefined };
  return facts.connections
    .filter(({ id }) => facts.recentUse?.some(({ connectionId }) => connectionId === id))
    .map((connection) => ({
      ...{ lineId: `${PACE}${connection.id}`, jobId: '', connectionId: connection.id, endsToMake: 0 },
      ...{ materialId: referenceMaterialId(facts), operations: ['cone', 'thread'] as const },
      ...{ startOnDay: LAST_DAY, dueOnDay: LAST_DAY },
      ...demandOf(connection, ['cone', 'thread'], settings),
    }));
}

/** What the lines that only ask are called: no line of the plan has a blank in its id. */
const PACE = 'pace of ';
/** Behind every line of the plan. */
const LAST_DAY = '2199-12-31';

interface Asked {
  readonly facts: ShopFacts;
  readonly ensemble: LifeDraws;
  readonly orders: OrdersCount;
  readonly horizonDays?: number | undefined;
  readonly worth?: WorthRegrinding | undefined;
}

function edgeNeed(kind: EdgeKind, queue: readonly QueuedLine[], asked: Asked): EdgeNeed {
  const { facts, ensemble } = asked;
  const candidates = queue.flatMap((queued) => needLine(kind, queued, facts, ensemble));
  const chosen = candidates.map(({ queued }) =>
    choosePart(kind, { connectionId: queued.line.connectionId, hand: queued.hand }, facts),
  );
  const parts = facts.parts.filter((part) => chosen.includes(part));
  const lines = candidates.map(({ line }, i) => ({
    ...line,
    part: parts.indexOf(chosen[i] as Part),
  }));
  const queued = candidates.map((candidate) => candidate.queued);
  const sources = [...toolSources(kind, queued, asked), ...orderSources(kind, queued, parts, asked)];
  const walk = walkNeed({
    ...{ lines, sources, partCount: parts.length, drawCount: ensemble.drawCount },
    newLife: (part, index) => ensemble.newLife(parts[part]?.id ?? '', index),
    ...(asked.horizonDays === undefined ? {} : { countedToInDays: asked.horizonDays }),
  });
  return { kind, parts, lines, sources, walk };
}

function needLine(
  kind: EdgeKind,
  queued: QueuedLine,
  { today }: ShopFacts,
  ensemble: LifeDraws,
): { readonly queued: QueuedLine; readonly line: NeedLine }[] {
  const { line, startOnDay, dueOnDay } = queued;
  const exposurePerEnd = line.exposurePerEnd[OPERATION[kind]];
  const weights = ensemble.materialFactor(kind, line.materialId);
  if (exposurePerEnd === undefined || weights === undefined) return [];
  const days = { startInDays: daysBetween(today, startOnDay), dueInDays: daysBetween(today, dueOnDay) };
  const amount = exposurePerEnd * cutsLeftOf(line, kind);
  return [{ queued, line: { lineId: line.lineId, ...days, amount, weights, part: -1 } }];
}

function toolSources(
  kind: EdgeKind,
  queue: readonly QueuedLine[],
  { facts, ensemble, worth }: Asked,
): NeedSource[] {
  const tools = new Map(facts.tools.map((tool) => [tool.id, tool]));
  return setItems(facts).flatMap((item): NeedSource[] => {
    const tool = item.role === kind ? tools.get(item.toolId) : undefined;
    if (tool === undefined) return [];
    const life = ensemble.residualLife(item.toolId);
    const freeInDays = freeIn(item, facts.today);
    const supply = worth && regrindSupply(tool, facts, ensemble, worth);
    const serves = servedBy(kind, item, queue);
    if (supply?.isWorn === true) return [sentToday(serves, supply)];
    if (life === undefined || freeInDays === null) return [];
    return [{ serves, freeInDays, life, ...(supply === undefined ? {} : { again: supply.again }) }];
  });
}

/** A worn blade that goes out for regrind today: what it comes back with, and again after that. */
function sentToday(serves: readonly number[], { again }: RegrindSupply): NeedSource {
  const { afterDays, lives } = again;
  const [life = new Float64Array(), ...more] = lives;
  return { serves, freeInDays: afterDays, life, again: { afterDays, lives: more } };
}

/** Days until a tool can be counted on; null where nobody knows. */
function freeIn({ state, backOnDay }: SetItem, today: string): number | null {
  if (state === 'in-crib' || state === 'issued') return 0;
  if (state !== 'regrind' || backOnDay == null || backOnDay < today) return null;
  return daysBetween(today, backOnDay);
}

function orderSources(
  kind: EdgeKind,
  queue: readonly QueuedLine[],
  parts: readonly Part[],
  asked: Asked,
): NeedSource[] {
  const { facts, ensemble } = asked;
  const coming = [...planArrivals(facts)].sort((a, b) => (a.orderId < b.orderId ? -1 : 1));
  const counts = new Map<string, number>();
  return coming.flatMap((arrival): NeedSource[] => {
    const first = counts.get(arrival.partId) ?? 0;
    counts.set(arrival.partId, first + arrival.quantity);
    if (arrival.role !== kind) return [];
    const part = parts.findIndex(({ id }) => id === arrival.partId);
    const when = { serves: servedBy(kind, arrival, queue), freeInDays: countsFrom(arrival, asked) };
    if (part < 0) return [{ ...when, life: livesOf(arrival, first, ensemble) }];
    const life = new Float64Array(ensemble.drawCount);
    return [{ ...when, life, fresh: { part, pieces: arrival.quantity } }];
  });
}

/** The lives of an order's pieces added up: of a part that would not be bought for any line, but fits. */
function livesOf({ partId, quantity }: Arrival, first: number, ensemble: LifeDraws): Float64Array {
  const life = new Float64Array(ensemble.drawCount);
  for (let piece = 0; piece < quantity; piece++) {
    const more = ensemble.newLife(partId, first + piece);
    for (let k = 0; k < life.length; k++) life[k] = (life[k] as number) + (more?.[k] ?? 0);
  }
  return life;
}

/** From which day an order counts, days from today. */
function countsFrom(arrival: Arrival, { facts, ensemble, orders }: Asked): number | ArrayLike<number> {
  if (orders === 'as-here') return 0;
  const days = arrivalIn(arrival, facts.today);
  const part = facts.parts.find(({ id }) => id === arrival.partId);
  if (orders === 'as-drawn' || part === undefined) return days;
  const soonest = soonestNewDays(facts, part, ensemble.drawCount);
  return soonest.map((soon, k) => {
    const day = typeof days === 'number' ? days : (days[k] ?? Number.POSITIVE_INFINITY);
    return day <= soon ? 0 : day;
  });
}

/** Days until the quickest of the part's offers could bring something ordered today, per draw; Infinity without a lead time. */
function soonestNewDays(facts: ShopFacts, part: Part, drawCount: number): Float64Array {
  const soonest = new Float64Array(drawCount).fill(Number.POSITIVE_INFINITY);
  for (const { supplier, leadTimeDays } of offersOf(part)) {
    if (leadTimeDays === null) continue;
    newOrderDays(facts, { partId: part.id, supplier, leadTimeDays }, drawCount).forEach((day, k) => {
      soonest[k] = Math.min(soonest[k] as number, day);
    });
  }
  return soonest;
}

/** Days until an order is there: drawn where its supplier's word is on record, else as stated; late without word: never. */
function arrivalIn({ arrivalDayDraws, expectedOnDay }: Arrival, today: string): number | ArrayLike<number> {
  if (arrivalDayDraws !== undefined) return arrivalDayDraws;
  return expectedOnDay < today ? Number.POSITIVE_INFINITY : daysBetween(today, expectedOnDay);
}

function servedBy(
  kind: EdgeKind,
  { fitsConnectionIds: fits, hand }: { readonly fitsConnectionIds: Fits; readonly hand?: string | undefined },
  queue: readonly QueuedLine[],
): number[] {
  return queue.flatMap(({ line, hand: wanted }, i) => {
    const fit = fits === 'all' || fits.includes(line.connectionId);
    return fit && (kind !== 'die' || hand === wanted) ? [i] : [];
  });
}
