import { addDays, type Day, dayNumber } from '../calendar/day';
import { invariant } from '../invariant';
import type { FluidWork } from './permit-fluid';
import { type Bottle, bottleStanding, compareFirst } from './pick-first';

/** A stock bottle with its product: closed ones begin their opened life when they are first drawn from. */
export interface SupplyBottle extends Bottle {
  readonly partId: string;
  /** First day on which it can be drawn from; today or before for what is here. */
  readonly fromDay: Day;
}

/** Work that draws fluid every day between two days, both included, in planned mL. */
export interface FluidDemand {
  readonly work: FluidWork;
  readonly fromDay: Day;
  readonly toDay: Day;
  readonly plannedMlPerDay: number;
}

export interface SupplyInput {
  readonly today: Day;
  readonly horizonDays: number;
  readonly bottles: readonly SupplyBottle[];
  readonly demands: readonly FluidDemand[];
  /** Measured ÷ planned use, one figure per future. */
  readonly ratios: ArrayLike<number>;
}

/** One future of the stock: what is usable at the end of each day, and the first day on which something was short. */
export interface SupplyCourse {
  /** By product, then day from today: mL in bottles still in date. */
  readonly levelMl: ReadonlyMap<string, Float64Array>;
  /** By product: first day, counted from today, on which its work went short; Infinity where it never did. */
  readonly shortFromDay: ReadonlyMap<string, number>;
  /** By bottle: mL left in it when its day had passed. */
  readonly expiredMl: ReadonlyMap<string, number>;
}

interface Stock {
  readonly bottle: SupplyBottle;
  readonly fromDay: number;
  readonly openedLifeDays: number;
  endsOn: number;
  labelEndsOn: number;
  opened: boolean;
  leftMl: number;
  expired: boolean;
}

const NEVER = Number.POSITIVE_INFINITY;
/** Half a drop. */
const ML_SLACK = 0.01;

/**
 * Walks the stock through the days, once for every ratio: each day's work draws first-expired-first-out from what is permitted
 * and in date; work with the fewest bottles to choose from draws first. A closed bottle is opened when it is first drawn from.
 * `productOf` says whose shortage it is when work goes short. What is left in a bottle past its day is counted as expired.
 */
export function supplyCourses(input: SupplyInput, productOf: (work: FluidWork) => string): SupplyCourse[] {
  const { today, horizonDays, demands } = input;
  invariant(
    Number.isInteger(horizonDays) && horizonDays >= 0,
    'supplyCourses requires whole days of 0 or more',
  );
  const from = dayNumber(today);
  const asked = demands
    .map((demand) => ({
      demand,
      product: productOf(demand.work),
      first: dayNumber(demand.fromDay) - from,
      last: dayNumber(demand.toDay) - from,
      choice: input.bottles
        .map((bottle, at) => ({ at, standing: bottleStanding(bottle, demand.work, today) }))
        .filter(({ standing }) => standing.bar === null)
        .sort((a, b) => compareFirst(a.standing, b.standing))
        .map(({ at }) => at),
    }))
    .sort((a, b) => a.choice.length - b.choice.length);
  const products = [...new Set(input.bottles.map(({ partId }) => partId))];
  return Array.from(input.ratios, (ratio) => {
    const stocks = input.bottles.map((bottle) => stockOf(bottle, from));
    const levelMl = new Map(products.map((product) => [product, new Float64Array(horizonDays + 1)]));
    const shortFromDay = new Map<string, number>();
    for (let day = 0; day <= horizonDays; day++) {
      for (const stock of stocks) if (stock.endsOn < day) stock.expired = true;
      for (const { demand, product, first, last, choice } of asked) {
        if (day < first || day > last || demand.plannedMlPerDay <= 0) continue;
        const short = draw(stocks, choice, {
          day,
          wantMl: demand.plannedMlPerDay * ratio,
          work: demand.work,
        });
        if (short > ML_SLACK && !shortFromDay.has(product)) shortFromDay.set(product, day);
      }
      for (const stock of stocks) {
        if (stock.expired || stock.fromDay > day || isSetAside(stock.bottle)) continue;
        const levels = levelMl.get(stock.bottle.partId);
        if (levels !== undefined) levels[day] = (levels[day] as number) + stock.leftMl;
      }
    }
    const expiredMl = new Map(
      stocks.flatMap(({ bottle, expired, leftMl }) => (expired ? [[bottle.toolId, leftMl] as const] : [])),
    );
    return { levelMl, shortFromDay, expiredMl };
  });
}

function isSetAside({ state }: SupplyBottle): boolean {
  return state !== 'in-crib' && state !== 'issued';
}

function stockOf(bottle: SupplyBottle, from: number): Stock {
  const { openedOnDay, openedLifeDays, expiresOnDay, extendedUntilDay } = bottle;
  const life = openedLifeDays ?? NEVER;
  const shelf = expiresOnDay === null ? NEVER : dayNumber(expiresOnDay) - from;
  const opened = openedOnDay === null ? NEVER : dayNumber(openedOnDay) - from + life;
  const labelEndsOn = Math.min(shelf, opened);
  const extended = extendedUntilDay ? dayNumber(extendedUntilDay) - from : Number.NEGATIVE_INFINITY;
  return {
    bottle,
    fromDay: dayNumber(bottle.fromDay) - from,
    openedLifeDays: life,
    endsOn: Math.max(labelEndsOn, extended),
    labelEndsOn,
    opened: openedOnDay !== null,
    leftMl: Math.max(0, bottle.levelMl ?? 0),
    expired: false,
  };
}

/** Draws one day's want from the bottles in order; what could not be had is given back. */
function draw(
  stocks: readonly Stock[],
  choice: readonly number[],
  { day, wantMl, work }: { day: number; wantMl: number; work: FluidWork },
): number {
  let want = wantMl;
  for (const at of choice) {
    const stock = stocks[at];
    if (want <= 0 || stock === undefined) break;
    const ends = work.duty === 'oxygen' ? stock.labelEndsOn : stock.endsOn;
    if (stock.expired || ends < day || stock.fromDay > day || stock.leftMl <= 0) continue;
    if (!stock.opened) {
      stock.opened = true;
      stock.labelEndsOn = Math.min(stock.labelEndsOn, day + stock.openedLifeDays);
      stock.endsOn = Math.min(stock.endsOn, day + stock.openedLifeDays);
    }
    const taken = Math.min(want, stock.leftMl);
    stock.leftMl -= taken;
    want -= taken;
  }
  return want;
}

/** The day so many days from today; null for never. */
export function dayOfCourse(today: Day, days: number): Day | null {
  return Number.isFinite(days) ? addDays(today, days) : null;
}
