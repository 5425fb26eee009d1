import { invariant } from '../invariant';
import { economicOrderQuantity, orderingCost } from './eoq';

/** One price tier: from so many units on, a unit costs so much. The first starts at 0 or 1, which is the same. */
export interface PriceTier {
  readonly from: number;
  readonly unitCost: number;
}

/** Steady demand under a price list. Keeping costs a share of the unit's price, or a fixed sum a unit, or both. */
export interface DiscountProblem {
  readonly demand: number;
  readonly orderCost: number;
  /** Share of a unit's price that keeping it costs over the time of `demand`. Default 0. */
  readonly holdingRate?: number;
  /** Fixed cost of keeping a unit as long. Default 0. */
  readonly holdingCost?: number;
  /** Ascending in `from`. */
  readonly tiers: readonly PriceTier[];
}

export interface DiscountedLot {
  readonly quantity: number;
  /** Which tier it is bought in, 0 the first. */
  readonly tier: number;
  /** Purchase, ordering and keeping. */
  readonly cost: number;
}

/**
 * Best lot where one price holds for every unit of the order: in each tier its own economic quantity if it lies in it, or
 * the tier's first quantity if it lies below. Domain: figures > 0. Source: formula (all-units discount).
 */
export function allUnitsLot(problem: DiscountProblem): DiscountedLot {
  const { demand, orderCost, tiers } = problem;
  const lots = tiers.flatMap(({ from, unitCost }, tier): DiscountedLot[] => {
    const steady = { demand, orderCost, holdingCost: keeping(problem, unitCost) };
    const wanted = economicOrderQuantity(steady).quantity;
    const end = tiers[tier + 1]?.from ?? Number.POSITIVE_INFINITY;
    if (wanted >= end) return [];
    const quantity = Math.max(wanted, from);
    return [{ quantity, tier, cost: demand * unitCost + orderingCost(steady, quantity) }];
  });
  return cheapest(lots);
}

/**
 * Best lot where a price holds only for the units from its break on: in each tier the order cost is raised by what the
 * earlier units cost over the tier's price, c̄ = V − c·b (V what the first b units cost); Q = √(2·demand·(order + c̄) ÷
 * keeping), counted where it lies in its tier. Domain: prices that fall from tier to tier. Source: formula (incremental).
 */
export function incrementalLot(problem: DiscountProblem): DiscountedLot {
  const { demand, orderCost, holdingRate = 0 } = problem;
  const tiers = problem.tiers.map((tier, i) => (i === 0 && tier.from <= 1 ? { ...tier, from: 0 } : tier));
  let paid = 0;
  const lots = tiers.flatMap(({ from, unitCost }, tier): DiscountedLot[] => {
    const before = tiers[tier - 1];
    if (before !== undefined) paid += before.unitCost * (from - before.from);
    const over = paid - unitCost * from;
    const steady = { demand, orderCost: orderCost + over, holdingCost: keeping(problem, unitCost) };
    const { quantity } = economicOrderQuantity(steady);
    const end = tiers[tier + 1]?.from ?? Number.POSITIVE_INFINITY;
    if (quantity < from || quantity >= end) return [];
    return [
      { quantity, tier, cost: demand * unitCost + orderingCost(steady, quantity) + (holdingRate * over) / 2 },
    ];
  });
  return cheapest(lots);
}

function keeping({ holdingRate = 0, holdingCost = 0 }: DiscountProblem, unitCost: number): number {
  return holdingRate * unitCost + holdingCost;
}

function cheapest(lots: readonly DiscountedLot[]): DiscountedLot {
  const best = lots.reduce<DiscountedLot | undefined>(
    (least, lot) => (least === undefined || lot.cost < least.cost ? lot : least),
    undefined,
  );
  invariant(best !== undefined, 'a price list requires tiers in ascending order from 0 on');
  return best;
}
