import { invariant } from '../invariant';

/** A figure for every period, or one for all of them. */
export type PerPeriod = number | readonly number[];

/** Demand by period with what ordering and keeping cost. Any money; demand and money >= 0. */
export interface LotProblem {
  readonly demand: readonly number[];
  /** Placing an order in a period. */
  readonly orderCost: PerPeriod;
  /** Keeping one unit from a period to the next. */
  readonly holdingCost: PerPeriod;
  /** One unit bought in a period. Default 0. */
  readonly unitCost?: PerPeriod;
}

export interface LotPlan {
  /** Quantity ordered in each period. */
  readonly quantities: readonly number[];
  readonly cost: number;
}

/** The figure of a period. */
export function inPeriod(value: PerPeriod, period: number): number {
  if (typeof value === 'number') return value;
  const figure = value[period];
  invariant(figure !== undefined, 'a cost by period requires one figure for every period');
  return figure;
}

/**
 * Lot sizes of least cost over a horizon: which weeks to order in, each order covering whole weeks to come.
 * F(t) = min over s <= t of F(s − 1) + order(s) + unit(s)·D(s…t) + Σ holding·stock carried; holding is counted from the
 * period after receipt. `costThrough[t]` is F of periods 0 … t. Weeks without demand cost no order.
 * Domain: finite figures >= 0. O(n²). Source: H. M. Wagner and T. M. Whitin, Management Science 5 (1958), 89–96.
 * @example wagnerWhitin({ demand: [90, 120, 80, 70], orderCost: 500, holdingCost: 2 }).cost // => 1380
 */
export function wagnerWhitin(problem: LotProblem): LotPlan & { readonly costThrough: readonly number[] } {
  const { demand, orderCost, holdingCost, unitCost = 0 } = problem;
  invariant(
    demand.every((units) => units >= 0 && Number.isFinite(units)),
    'wagnerWhitin requires demand of 0 or more in every period',
  );
  const best: number[] = [];
  const from: number[] = [];
  demand.forEach((_, t) => {
    best[t] = Number.POSITIVE_INFINITY;
    let [quantity, holding] = [0, 0];
    for (let s = t; s >= 0; s--) {
      if (s < t) holding += inPeriod(holdingCost, s) * quantity;
      quantity += demand[s] as number;
      const order = quantity === 0 ? 0 : inPeriod(orderCost, s) + inPeriod(unitCost, s) * quantity;
      const cost = (s === 0 ? 0 : (best[s - 1] as number)) + order + holding;
      if (cost < (best[t] as number)) [best[t], from[t]] = [cost, s];
    }
  });
  const quantities = demand.map(() => 0);
  for (let t = demand.length - 1; t >= 0; t = (from[t] as number) - 1) {
    const s = from[t] as number;
    quantities[s] = sum(demand, s, t);
  }
  return { quantities, cost: best.at(-1) ?? 0, costThrough: best };
}

/** One order in period s for the demand of s … t: order, purchase and holding. */
export function costOfOrder(
  { demand, orderCost, holdingCost, unitCost = 0 }: LotProblem,
  s: number,
  t: number,
): number {
  const quantity = sum(demand, s, t);
  if (quantity === 0) return 0;
  let cost = inPeriod(orderCost, s) + inPeriod(unitCost, s) * quantity;
  let stock = quantity;
  for (let u = s; u < t; u++) {
    stock -= demand[u] as number;
    cost += inPeriod(holdingCost, u) * stock;
  }
  return cost;
}

function sum(values: readonly number[], from: number, to: number): number {
  let total = 0;
  for (let i = from; i <= to; i++) total += values[i] as number;
  return total;
}
