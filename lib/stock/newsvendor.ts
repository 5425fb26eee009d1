import { invariant } from '../invariant';
import { normalQuantile } from '../numeric/normal';
import { standardNormalLeftover, standardNormalLoss } from './normal-loss';

/** One chance to buy: normal demand, what a unit too many and a unit too few cost. */
export interface OneChance {
  readonly mean: number;
  readonly sd: number;
  /** A unit left over. */
  readonly overage: number;
  /** A unit short. */
  readonly underage: number;
}

export interface OneChanceResult {
  readonly quantity: number;
  /** Expected cost of what is left over and what is short. */
  readonly cost: number;
  readonly expectedLeftover: number;
  readonly expectedShort: number;
  /** Share of demand that is met, 1 − E[short]/mean. */
  readonly fillRate: number;
}

/**
 * How much to have when there is one chance to buy (before a shutdown, say) and demand is normal: the quantity whose
 * chance of being enough is underage ÷ (underage + overage). A figure bought at c and worth p: overage c, underage p − c,
 * expected profit = underage·mean − cost. Domain: sd > 0, costs > 0. Source: formula (newsvendor).
 */
export function newsvendor(chance: OneChance): OneChanceResult {
  const { mean, sd, overage, underage } = chance;
  invariant(sd > 0 && overage > 0 && underage > 0, 'newsvendor requires figures above 0');
  return newsvendorAt(chance, mean + sd * normalQuantile(underage / (underage + overage)));
}

/** The same at a stated quantity. */
export function newsvendorAt({ mean, sd, overage, underage }: OneChance, quantity: number): OneChanceResult {
  const z = (quantity - mean) / sd;
  const expectedLeftover = sd * standardNormalLeftover(z);
  const expectedShort = sd * standardNormalLoss(z);
  return {
    quantity,
    cost: overage * expectedLeftover + underage * expectedShort,
    expectedLeftover,
    expectedShort,
    fillRate: 1 - expectedShort / mean,
  };
}

/**
 * The same for stock that is topped up every period and comes `leadPeriods` later: demand adds up over leadPeriods + 1
 * periods (base stock). mean and sd are of one period. Domain: as newsvendor, leadPeriods >= 0. Source: formula.
 */
export function baseStock(chance: OneChance, leadPeriods: number): OneChanceResult {
  const periods = leadPeriods + 1;
  return newsvendor({ ...chance, mean: chance.mean * periods, sd: chance.sd * Math.sqrt(periods) });
}
