import { addDays, type Day } from '../calendar/day';
import { containersToBuy, containerUsedInTime, monthsOfContainer } from '../fluid/container';
import { bottleUseBy } from '../fluid/use-by';
import { leadDaysWithin } from '../lead-time/lead-time-belief';
import type { Part } from '../shop/part';
import { learntUse, type ShopBottle, shopBottles } from './fluid-facts';
import { type FluidSupply, fluidSupply, SUPPLY_DAYS } from './fluid-supply';
import { beliefOf, RECEIVING_DAYS } from './order-arrivals';
import { requiredProbability } from './plan-facts';
import type { ShopFacts } from './shop-facts';

/** What is bought lasts at least so long beyond its lead time. Common practice, no source. */
const COVER_DAYS = 90;
/** A bottle is warned of when at least this share of the futures leave this share of it unused. */
const WASTE = { futures: 0.5, share: 0.2, leastMl: 50 };

/** Level of a product so many days from today, in mL. */
export interface FanPoint {
  readonly day: number;
  readonly low: number;
  readonly mid: number;
  readonly high: number;
}

const FAN_STEP_DAYS = 7;

/** A bottle that will stand past its day before it is used. */
export interface WastedBottle {
  readonly toolId: string;
  readonly useByDay: Day;
  /** Median of what is left in it then. */
  readonly leftMl: number;
}

/** How one product stands and what is to be done: for the fluid screen and for the orders. */
export interface FluidNeed {
  readonly part: Part;
  readonly usableMl: number;
  /** Median measured use a day: of the plan's days to come, and of the log's pace. */
  readonly mlPerDay: number;
  /** mL in date week by week: 10 %, 50 % and 90 % of the futures. */
  readonly fan: readonly FanPoint[];
  /** First day on which work goes short, in the earliest futures that the shop still counts with, and in half of them. */
  readonly shortOnDay: { readonly early: Day | null; readonly median: Day | null };
  /** The bottle in use or next: when its life ends. */
  readonly firstUseByDay: Day | null;
  /** Which comes first for what is here: the level or the date. Null: neither within a year. */
  readonly endsBy: 'used-up' | 'out-of-date' | null;
  readonly orderByDay: Day | null;
  readonly containers: number;
  readonly containerMl: number | null;
  /** Days that a container bought now could be used. */
  readonly lifeDays: number | null;
  /** The largest container that would be used up in time, where the usual one would not. */
  readonly smallerContainerMl: number | null;
  readonly containerMonths: number | null;
  readonly wasted: readonly WastedBottle[];
}

/**
 * What the shop needs of each fluid: how long what is here lasts, on which day it runs short or out of date, by when to order and
 * how much, no more than is used within its life. Counts over the futures of the shop's own use. For /fluid and the orders.
 */
export function fluidNeeds(facts: ShopFacts, supply: FluidSupply = fluidSupply(facts)): FluidNeed[] {
  const bottles = shopBottles(facts);
  return facts.parts
    .filter(({ role }) => role === 'fluid')
    .map((part) =>
      needOf(
        facts,
        supply,
        part,
        bottles.filter((bottle) => bottle.part.id === part.id),
      ),
    );
}

function needOf(
  facts: ShopFacts,
  supply: FluidSupply,
  part: Part,
  bottles: readonly ShopBottle[],
): FluidNeed {
  const { today, courses } = supply;
  const mlPerDay = measuredMlPerDay(facts, supply, part.id);
  const short = courses
    .map(({ shortFromDay }) => shortFromDay.get(part.id) ?? Infinity)
    .sort((a, b) => a - b);
  const late = 1 - requiredProbability(facts.shop, 'ordinary');
  const early = dayOf(today, quantile(short, late));
  const usable = bottles.filter((bottle) => isUsable(bottle, today));
  const wasted = bottles.flatMap((bottle) => wasteOf(bottle, supply));
  return {
    part,
    usableMl: usable.reduce((sum, { levelMl }) => sum + (levelMl ?? 0), 0),
    mlPerDay,
    fan: fanOf(courses, part.id),
    shortOnDay: { early, median: dayOf(today, quantile(short, 0.5)) },
    firstUseByDay: usable.map((bottle) => bottleUseBy(bottle).onDay ?? '9999').sort()[0] ?? null,
    endsBy: endsBy(quantile(short, 0.5), wasted),
    orderByDay: early === null ? null : addDays(early, -leadDaysOf(facts, part)),
    wasted,
    ...purchase(part, mlPerDay),
  };
}

/** Days from placing to the shelf, as surely as the shop asks: its supplier's achieved lead times and the receiving check. */
function leadDaysOf(facts: ShopFacts, { supplier, leadTimeDays }: Part): number {
  if (!leadTimeDays) return RECEIVING_DAYS;
  const sure = requiredProbability(facts.shop, 'ordinary');
  return Math.ceil(leadDaysWithin(beliefOf(facts, supplier), leadTimeDays, sure)) + RECEIVING_DAYS;
}

/** Measured mL a day of one product in the median future: the plan's work over the horizon, past it the log's pace. */
function measuredMlPerDay(facts: ShopFacts, supply: FluidSupply, partId: string): number {
  const pace = supply.pacePlannedMl.get(partId) ?? 0;
  return pace * learntUse(facts).ratio.mean;
}

function purchase(part: Part, mlPerDay: number) {
  const { containerMl } = part;
  const lives = [part.openedLifeDays, part.shelfLifeDays].filter((days) => typeof days === 'number');
  const lifeDays = lives.length === 0 ? null : Math.min(...lives);
  const plain = { containers: 1, containerMl, lifeDays, smallerContainerMl: null, containerMonths: null };
  if (containerMl === null || mlPerDay <= 0) return plain;
  const wantMl = mlPerDay * (COVER_DAYS + (part.leadTimeDays ?? 0));
  const isTooBig = lifeDays !== null && mlPerDay * lifeDays < containerMl;
  return {
    ...plain,
    containers: containersToBuy({ wantMl, containerMl, mlPerDay, lifeDays }),
    smallerContainerMl: isTooBig ? containerUsedInTime({ mlPerDay, lifeDays }) : null,
    containerMonths: monthsOfContainer({ containerMl, mlPerDay }),
  };
}

function wasteOf(bottle: ShopBottle, { courses, today }: FluidSupply): WastedBottle[] {
  const useByDay = bottleUseBy(bottle).onDay;
  if (useByDay === null || useByDay < today || !isUsable(bottle, today)) return [];
  const left = courses.map(({ expiredMl }) => expiredMl.get(bottle.toolId) ?? 0).sort((a, b) => a - b);
  const leftMl = quantile(left, WASTE.futures);
  const least = Math.max(WASTE.leastMl, WASTE.share * (bottle.levelMl ?? 0));
  return leftMl >= least ? [{ toolId: bottle.toolId, useByDay, leftMl }] : [];
}

function isUsable(bottle: ShopBottle, today: Day): boolean {
  return (
    (bottle.state === 'in-crib' || bottle.state === 'issued') &&
    (bottleUseBy(bottle).onDay ?? '9999') >= today
  );
}

function endsBy(shortInDays: number, wasted: readonly WastedBottle[]): FluidNeed['endsBy'] {
  if (wasted.length > 0) return 'out-of-date';
  return Number.isFinite(shortInDays) ? 'used-up' : null;
}

/** The fan week by week: sorted once for every day shown. */
function fanOf(courses: FluidSupply['courses'], partId: string): FanPoint[] {
  const fan: FanPoint[] = [];
  for (let day = 0; day <= SUPPLY_DAYS; day += FAN_STEP_DAYS) {
    const levels = courses.map(({ levelMl }) => levelMl.get(partId)?.[day] ?? 0).sort((a, b) => a - b);
    fan.push({ day, low: quantile(levels, 0.1), mid: quantile(levels, 0.5), high: quantile(levels, 0.9) });
  }
  return fan;
}

/** The value below which a share p of the sorted figures lies: an order statistic, so that it is one of them. */
function quantile(sorted: readonly number[], p: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(p * sorted.length))] ?? Infinity;
}

function dayOf(today: Day, days: number): Day | null {
  return Number.isFinite(days) ? addDays(today, days) : null;
}
