import { addDays, compareDays, type Day, dayNumber, dayOfNumber, daysBetween } from '../calendar/day';
import { firmArrivalDay } from '../capability/arrival-day';
import { dropsPerDay } from '../fluid/measured-use';
import { type FluidWork, fluidObjection } from '../fluid/permit-fluid';
import { pickFirst } from '../fluid/pick-first';
import {
  type FluidDemand,
  type SupplyBottle,
  type SupplyCourse,
  supplyCourses,
} from '../fluid/supply-course';
import { plannedMlPerEnd } from '../fluid/use-per-end';
import { ratioDraws } from '../fluid/use-ratio';
import type { Part } from '../shop/part';
import { exposureOfEnd } from '../wear/connection-exposure';
import { chlorinatedOf, fluidWork, learntUse, shopBottles } from './fluid-facts';
import { endsLeftFor, planArrivals, requiredProbability } from './plan-facts';
import type { LineFacts, ShopFacts } from './shop-facts';

/** Past the last line of the plan the log's own pace goes on, as it was over so many days. */
export const PACE_DAYS = 182;
/** How far the stock is walked. */
export const SUPPLY_DAYS = 365;
const FUTURES = 101;

/** The stock of fluid through the days, over the futures of the shop's use. */
export interface FluidSupply {
  readonly today: Day;
  readonly demands: readonly FluidDemand[];
  readonly courses: readonly SupplyCourse[];
  /** Planned mL a day of each product, as the log of the last half year goes. */
  readonly pacePlannedMl: ReadonlyMap<string, number>;
  /** The product that work is given: that of the bottle to be used first, else one that could be bought for it. */
  productOf(work: FluidWork): string | undefined;
}

/**
 * Walks the fluids through the days: the plan's lines first, each drawn evenly over its days, then the pace of the log; measured
 * use over planned as the levels teach it. What is on order comes as late as its supplier may bring it.
 */
export function fluidSupply(facts: ShopFacts): FluidSupply {
  const { today } = facts;
  const bottles = [
    ...shopBottles(facts).map((bottle) => ({ ...bottle, partId: bottle.part.id, fromDay: today })),
    ...coming(facts),
  ];
  const productOf = (work: FluidWork) => {
    const [first] = pickFirst(bottles, work, today);
    return first?.bottle.partId ?? productFor(facts, work)?.id;
  };
  const demands = [...lineDemands(facts), ...paceDemands(facts)];
  const ratios = ratioDraws(learntUse(facts).ratio, FUTURES);
  const courses = supplyCourses(
    { today, horizonDays: SUPPLY_DAYS, bottles, demands, ratios },
    (work) => productOf(work) ?? '',
  );
  const pacePlannedMl = new Map<string, number>();
  for (const { work, plannedMlPerDay } of paceDemands(facts)) {
    const product = productOf(work);
    if (product !== undefined)
      pacePlannedMl.set(product, (pacePlannedMl.get(product) ?? 0) + plannedMlPerDay);
  }
  return { today, demands, courses, pacePlannedMl, productOf };
}

/** A product of the shop's list that may be used on the work, whether or not any of it is here. */
export function productFor(facts: ShopFacts, work: FluidWork): Part | undefined {
  return facts.parts.find((part) => part.role === 'fluid' && fluidObjection(part, work) === null);
}

function lineDemands(facts: ShopFacts): FluidDemand[] {
  return facts.lines.flatMap((line) => {
    const plannedMl = plannedMlOfLine(facts, line);
    if (plannedMl === 0) return [];
    const fromDay = laterOf(line.startOnDay, facts.today);
    const toDay = laterOf(line.dueOnDay, fromDay);
    const plannedMlPerDay = plannedMl / (daysBetween(fromDay, toDay) + 1);
    return [{ work: fluidWork(facts, line), fromDay, toDay, plannedMlPerDay }];
  });
}

function laterOf(a: Day, b: Day): Day {
  return compareDays(a, b) < 0 ? b : a;
}

/** Planned mL of what is left of a line: cones and threads each by their own count. */
export function plannedMlOfLine(facts: ShopFacts, line: LineFacts): number {
  const connection = facts.connections.find(({ id }) => id === line.connectionId);
  if (connection === undefined) return 0;
  const { dropsPerMl } = learntUse(facts);
  const turns = exposureOfEnd({ operation: 'thread', connection });
  return (
    endsLeftFor(line, 'cone') * plannedMlPerEnd({ cone: true, turns: 0, dropsPerMl }) +
    endsLeftFor(line, 'thread') * plannedMlPerEnd({ cone: false, turns, dropsPerMl })
  );
}

/** The log's pace from the day after the plan's last line, material by material. */
function paceDemands(facts: ShopFacts): FluidDemand[] {
  const { today } = facts;
  const rows = facts.fluidLog?.rows ?? [];
  const last =
    facts.lines
      .map(({ dueOnDay }) => dueOnDay)
      .sort()
      .at(-1) ?? addDays(today, -1);
  const fromDay = dayOfNumber(Math.max(dayNumber(today), dayNumber(last) + 1));
  const { dropsPerMl } = learntUse(facts);
  return [...new Set(rows.map(({ materialId }) => materialId))].flatMap((materialId) => {
    const drops = dropsPerDay(
      rows.filter((row) => row.materialId === materialId),
      today,
      PACE_DAYS,
    );
    if (drops === 0) return [];
    const toDay = addDays(today, SUPPLY_DAYS);
    return [{ work: fluidWork(facts, { materialId }), fromDay, toDay, plannedMlPerDay: drops / dropsPerMl }];
  });
}

/**
 * Cans on order, each closed until it is needed, from the day by which their supplier brings them as surely as the shop asks.
 * A late order whose supplier's word is on record goes on from today; one without is left out.
 */
function coming(facts: ShopFacts): SupplyBottle[] {
  const sure = requiredProbability(facts.shop, 'ordinary');
  return planArrivals(facts).flatMap((arrival) => {
    const part = facts.parts.find(({ id }) => id === arrival.partId);
    const fromDay = part?.role === 'fluid' ? firmArrivalDay(arrival, sure, facts.today) : null;
    if (part === undefined || fromDay === null) return [];
    return Array.from({ length: Math.min(arrival.quantity, 50) }, (_, piece) => ({
      toolId: `${arrival.orderId}/${piece + 1}`,
      partId: part.id,
      fromDay,
      state: 'in-crib',
      levelMl: part.containerMl ?? null,
      expiresOnDay: arrival.expiresOnDay ?? null,
      openedOnDay: null,
      openedLifeDays: part.openedLifeDays,
      permittedMaterialIds: part.permittedMaterialIds,
      permittedDuties: part.permittedDuties,
      chlorinated: chlorinatedOf(facts, { partId: part.id, lot: '' }, part),
    }));
  });
}
