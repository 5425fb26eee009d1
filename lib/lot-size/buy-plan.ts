import { invariant } from '../invariant';
import { orderableQuantity, purchaseCost, type SaleTerms } from './purchase-cost';
import { inPeriod, type PerPeriod } from './wagner-whitin';

/** A horizon of whole units to buy under real terms of sale. */
export interface BuyProblem {
  /** Whole units needed in each period. */
  readonly demand: readonly number[];
  /** The order's own cost: paper, post, the receiving check. */
  readonly orderCost: PerPeriod;
  /** Keeping one unit from a period to the next. */
  readonly holdingCost: PerPeriod;
  readonly terms: SaleTerms;
  /** Periods that a unit keeps, the one it comes in included; what is left then is thrown away. Default: for ever. */
  readonly shelfLifePeriods?: number;
  /** Units on the shelf at the start. Default 0. */
  readonly openingStock?: number;
}

export interface BuyPlan {
  readonly quantities: readonly number[];
  /** Purchase, orders and holding. */
  readonly cost: number;
}

/**
 * Lots of least cost over a horizon in whole packs, from a least quantity, with price breaks of either kind and a shelf
 * life: exact dynamic programming over (period, stock). What cannot be used before it expires is let go at once: it would
 * only cost. So stock after an order in period t never exceeds the demand of the next `shelfLifePeriods`, and old stock is
 * used first. With packs of 1, no breaks and no shelf life this is Wagner and Whitin's problem.
 * Cost: O(periods × units²), units at most the whole demand: 52 weeks with 200 units in all take under a tenth of a second.
 * Domain: whole demand and stock, money >= 0. Source: formula (Bellman's recursion).
 */
export function buyPlan(problem: BuyProblem): BuyPlan {
  const { demand, openingStock = 0, shelfLifePeriods = Number.POSITIVE_INFINITY } = problem;
  invariant(
    demand.every((units) => Number.isInteger(units) && units >= 0),
    'buyPlan requires whole demand',
  );
  const caps = demand.map((_, t) => sumFrom(demand, t, shelfLifePeriods));
  const choices: Int32Array[] = [];
  let after: Float64Array = new Float64Array((caps.at(-1) ?? 0) + 1);
  for (let t = demand.length - 1; t >= 0; t--) {
    const most = sumFrom(demand, t, Number.POSITIVE_INFINITY);
    const step = bestOrders(problem, t, caps[t] as number, after, most);
    choices[t] = step.quantities;
    after = step.costs;
  }
  let stock = Math.min(openingStock, caps[0] ?? 0);
  const cost = demand.length === 0 ? 0 : (after[stock] as number);
  const quantities = demand.map((units, t) => {
    const had = Math.min(stock, caps[t] as number);
    const quantity = choices[t]?.[had] ?? 0;
    stock = Math.min(had + quantity, caps[t] as number) - units;
    return quantity;
  });
  return { quantities, cost };
}

/** For each stock at the start of period t: the best order, and the cost from there to the end. */
function bestOrders(
  { demand, orderCost, holdingCost, terms }: BuyProblem,
  t: number,
  cap: number,
  after: Float64Array,
  most: number,
): { readonly quantities: Int32Array; readonly costs: Float64Array } {
  const units = demand[t] as number;
  const lots = orderableLots(terms, most).map((quantity) => ({
    quantity,
    price: quantity === 0 ? 0 : inPeriod(orderCost, t) + purchaseCost(terms, quantity),
  }));
  const quantities = new Int32Array(cap + 1);
  const costs = new Float64Array(cap + 1).fill(Number.POSITIVE_INFINITY);
  for (let stock = 0; stock <= cap; stock++) {
    for (const { quantity, price } of lots) {
      const left = Math.min(stock + quantity, cap) - units;
      if (left < 0) continue;
      const kept = Math.min(left, after.length - 1);
      const cost = price + inPeriod(holdingCost, t) * left + (after[kept] as number);
      if (cost < (costs[stock] as number)) [costs[stock], quantities[stock]] = [cost, quantity];
    }
  }
  return { quantities, costs };
}

/**
 * Every quantity worth ordering: whole packs up to what is still needed; beyond that only the least of each price break, since
 * what is ordered on top of it costs more and serves nothing.
 */
function orderableLots(terms: SaleTerms, most: number): number[] {
  const lots = [0];
  const last = orderableQuantity(terms, Math.max(most, 1));
  for (let lot = orderableQuantity(terms, 1); lot <= last; lot += terms.packSize) lots.push(lot);
  const breaks = terms.priceBreaks.map(({ fromQuantity }) => orderableQuantity(terms, fromQuantity));
  return [...lots, ...[...new Set(breaks)].filter((lot) => lot > last)];
}

function sumFrom(demand: readonly number[], start: number, periods: number): number {
  let total = 0;
  for (let t = start; t < demand.length && t < start + periods; t++) total += demand[t] as number;
  return total;
}
