import { invariant } from '../invariant';

/** Steady demand with what ordering and keeping cost, over one and the same stretch of time (a year, say). */
export interface SteadyDemand {
  /** Units used in that time. */
  readonly demand: number;
  readonly orderCost: number;
  /** Keeping one unit that long. */
  readonly holdingCost: number;
}

/**
 * Economic order quantity: the lot at which ordering and keeping cost the same, √(2·demand·order ÷ holding).
 * For parts used up steadily, blades by the hundred; not for dies by the piece. Domain: all > 0.
 * Source: F. W. Harris (1913); formula.
 * @example economicOrderQuantity({ demand: 100, orderCost: 2, holdingCost: 1 }).quantity // => 20
 */
export function economicOrderQuantity(steady: SteadyDemand): {
  readonly quantity: number;
  readonly cost: number;
} {
  const { demand, orderCost, holdingCost } = steady;
  invariant(
    demand > 0 && orderCost >= 0 && holdingCost > 0,
    'economicOrderQuantity requires figures above 0',
  );
  const quantity = Math.sqrt((2 * demand * orderCost) / holdingCost);
  return { quantity, cost: Math.sqrt(2 * demand * orderCost * holdingCost) };
}

/**
 * What ordering and keeping cost at a given lot: order·demand/Q + holding·Q/2. Domain: quantity > 0.
 * @example orderingCost({ demand: 1300, orderCost: 8, holdingCost: 0.225 }, 250) // => 69.725
 */
export function orderingCost({ demand, orderCost, holdingCost }: SteadyDemand, quantity: number): number {
  invariant(quantity > 0, 'orderingCost requires a quantity above 0');
  return (orderCost * demand) / quantity + (holdingCost * quantity) / 2;
}
