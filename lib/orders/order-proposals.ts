import { addDays, type Day } from '../calendar/day';
import type { LifeDraws } from '../ensemble/life-draws';
import { orderableQuantity, purchaseCost } from '../lot-size/purchase-cost';
import type { ShopFacts } from '../outlook/shop-facts';
import { type Costs, DEFAULT_COSTS } from '../shop/costs';
import type { Part } from '../shop/part';
import { compareText } from '../text/compare-text';
import { type BuyingWay, buyUnder } from './buy-offer';
import { needOf } from './order-by';
import { pieceBand, stockOutBy } from './part-need';
import { offersOf } from './part-offers';
import { type PartOutlook, partOutlooks } from './part-outlook';
import { type RegrindsInstead, regrindsInstead } from './regrinds-instead';

/** How far ahead orders look where nobody says otherwise. */
export const ORDER_HORIZON_DAYS = 56;

/** One part with how many are needed, what to order of it, by when, why, and what happens if not. */
export interface OrderProposal {
  readonly part: Part;
  readonly outlook: PartOutlook;
  /** New pieces needed within the horizon: by the plan alone, and with unplanned work. */
  readonly plannedBand: { readonly low: number; readonly median: number; readonly high: number };
  readonly totalBand: { readonly low: number; readonly median: number; readonly high: number };
  /** The way chosen: the cheapest that comes in time, else the surest. */
  readonly chosen: BuyingWay;
  readonly others: readonly BuyingWay[];
  readonly quantity: number;
  readonly orderByOnDay: Day | null;
  /** Chance of running out within the horizon with 0, 1, 2 … pieces more, and what these cost. */
  readonly byPieces: readonly {
    readonly pieces: number;
    readonly stockOut: number;
    readonly costMinor: number | null;
  }[];
  /** Chance that it runs out without an order, and the middle day of that. */
  readonly runsOut: { readonly probability: number; readonly onDay: Day | null };
  /** Chance of running short for a time that only the orders on their way can end: nothing bought today comes sooner. */
  readonly waits: number;
  /** Lines that run short without it, the soonest first. */
  readonly lines: readonly {
    readonly lineId: string;
    readonly probability: number;
    readonly onDay: Day | null;
  }[];
  /** Cost of the stop on average if it is only ordered when the last piece is gone; and of waiting a week from today. */
  readonly ifNot: { readonly stoppedDays: number | null; readonly costMinor: number | null };
  readonly weekCostMinor: number | null;
  /** Blades that are reground instead of bought. */
  readonly regrinds: RegrindsInstead | null;
}

/** A line is named where it runs short at least so often. */
const NAMED = 0.05;

const kept = new WeakMap<LifeDraws, { facts: ShopFacts; byHorizon: Map<number, OrderProposal[]> }>();

/**
 * What the shop needs of every blade and die within the horizon, whether or not anything need be ordered; those to be
 * ordered first by the day. Counts over the one set of futures, once to these and
 * their facts. Fluids are in `fluidNeeds`, other items in `missingParts`.
 */
export function partProposals(
  facts: ShopFacts,
  ensemble: LifeDraws,
  horizonDays = ORDER_HORIZON_DAYS,
): OrderProposal[] {
  const known = kept.get(ensemble);
  const byHorizon = known?.facts === facts ? known.byHorizon : new Map<number, OrderProposal[]>();
  kept.set(ensemble, { facts, byHorizon });
  const costs = facts.costs ?? DEFAULT_COSTS;
  const found =
    byHorizon.get(horizonDays) ??
    partOutlooks(facts, ensemble, horizonDays)
      .map((outlook) => proposalOf(outlook, facts, costs))
      .sort(bySoonest);
  byHorizon.set(horizonDays, found);
  return [...found];
}

/** Those parts of which something is to be ordered, the soonest order-by day first. */
export function orderProposals(
  facts: ShopFacts,
  ensemble: LifeDraws,
  horizonDays = ORDER_HORIZON_DAYS,
): OrderProposal[] {
  return partProposals(facts, ensemble, horizonDays).filter(({ quantity }) => quantity > 0);
}

function proposalOf(outlook: PartOutlook, facts: ShopFacts, costs: Costs): OrderProposal {
  const ways = offersOf(outlook.part).map((offer) => buyUnder(offer, outlook, facts, costs));
  const chosen = chooseWay(ways, outlook.service) as BuyingWay;
  const { today } = facts;
  const { part, total, short, horizonDays, drafted } = outlook;
  const stopped = chosen.stoppedDaysWhenOut;
  const cost = (days: number | null) => (days === null ? null : Math.round(days * costs.stoppedDayMinor));
  return {
    ...{ part, outlook, chosen, quantity: chosen.quantity },
    plannedBand: pieceBand(outlook.planned, horizonDays),
    totalBand: pieceBand(total, horizonDays),
    others: ways.filter((way) => way !== chosen),
    orderByOnDay: dayIn(today, chosen.orderByInDays),
    byPieces: byPieces(outlook, chosen, costs),
    runsOut: runsOut(short.needDays[drafted], today, horizonDays),
    waits: waitsFor(outlook),
    lines: namedLines(outlook, today),
    ifNot: { stoppedDays: stopped, costMinor: cost(stopped) },
    weekCostMinor: cost(chosen.stoppedDaysPerWeek),
    regrinds: regrindsInstead(outlook, facts),
  };
}

/** The cheapest way that comes in time as surely as the shop asks; where none does, the surest. */
export function chooseWay(ways: readonly BuyingWay[], service: number): BuyingWay | undefined {
  const price = ({ priceMinor }: BuyingWay) => priceMinor ?? Number.MAX_VALUE;
  const sure = ({ inTimeToday }: BuyingWay) => inTimeToday ?? 0;
  const inTime = ways.filter((way) => sure(way) >= service);
  if (inTime.length > 0) return [...inTime].sort((a, b) => price(a) - price(b))[0];
  return [...ways].sort((a, b) => sure(b) - sure(a) || price(a) - price(b))[0];
}

const LEAST_SHOWN = 4;

function byPieces(
  { short, horizonDays, drafted }: PartOutlook,
  { offer, quantity }: BuyingWay,
  costs: Costs,
) {
  const most = Math.max(LEAST_SHOWN, quantity + 1);
  return stockOutBy(short, horizonDays, most + drafted)
    .slice(drafted)
    .map((stockOut, pieces) => {
      const bought = orderableQuantity(offer.terms, pieces);
      const price = offer.priceMinor === null ? null : purchaseCost(offer.terms, bought);
      const costMinor = price === null ? null : price + (pieces === 0 ? 0 : costs.orderMinor);
      return { pieces, stockOut, costMinor };
    });
}

/** Share of the draws that run short within the horizon, yet not for want of buying. */
function waitsFor({ total, short, horizonDays, drafted }: PartOutlook): number {
  const all = stockOutBy(short, horizonDays, drafted)[drafted] ?? 0;
  const bought = stockOutBy(total, horizonDays, drafted)[drafted] ?? 0;
  return Math.max(0, all - bought);
}

function runsOut(needDays: Float64Array | undefined, today: Day, horizonDays: number) {
  if (needDays === undefined) return { probability: 0, onDay: null };
  const within = needDays.map((day) => (day <= horizonDays ? day : Number.POSITIVE_INFINITY));
  const { probability, medianInDays } = needOf(within);
  return { probability, onDay: dayIn(today, medianInDays) };
}

function namedLines({ lines }: PartOutlook, today: Day) {
  return lines
    .map(({ lineId, shortDays }) => ({ lineId, ...needOf(shortDays) }))
    .filter(({ probability }) => probability >= NAMED)
    .map(({ lineId, probability, medianInDays }) => ({
      lineId,
      probability,
      onDay: dayIn(today, medianInDays),
    }))
    .sort((a, b) => compareText(a.onDay ?? '', b.onDay ?? ''));
}

function dayIn(today: Day, inDays: number | null): Day | null {
  return inDays === null || !Number.isFinite(inDays) ? null : addDays(today, inDays);
}

function bySoonest(a: OrderProposal, b: OrderProposal): number {
  if (a.quantity > 0 !== b.quantity > 0) return a.quantity > 0 ? -1 : 1;
  const day = ({ orderByOnDay }: OrderProposal) => orderByOnDay ?? '9999';
  return compareText(day(a), day(b)) || compareText(a.part.id, b.part.id);
}
