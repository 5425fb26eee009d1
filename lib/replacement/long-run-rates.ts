import type { ChangeCosts } from './change-costs';
import { cycleCurves } from './cycle-curves';
import { cyclesAt, type LifePosterior, thinned } from './life-posterior';
import { posteriorReplacementAge } from './posterior-age';

/**
 * What a unit of exposure costs in the long run in each draw when edges are changed at one age, or run to wear-out (null):
 *
 *   C_k = (c_p + (c_f − c_p)·F_k(age)) / ∫₀^age R_k
 *
 * Source: formula (renewal reward).
 */
export function ratesAtAge(
  life: LifePosterior,
  age: number | null,
  { plannedCost, failureCost }: ChangeCosts,
): Float64Array {
  const { exposure, failed } = cyclesAt(life, age);
  return exposure.map(
    (lived, k) => (plannedCost + (failureCost - plannedCost) * (failed[k] as number)) / lived,
  );
}

/** The same at the age that costs least over everything that is believed of the life. `draws`: how many the age is sought over. */
export function longRunRates(life: LifePosterior, costs: ChangeCosts, draws: number): Float64Array {
  const { age } = posteriorReplacementAge(cycleCurves(thinned(life, draws)), costs);
  return ratesAtAge(life, age, costs);
}
