import { invariant } from '../invariant';
import type { ChangeCosts } from './change-costs';
import { cycleCurves } from './cycle-curves';
import { cyclesAt, type LifePosterior } from './life-posterior';
import { posteriorReplacementAge } from './posterior-age';

/** One edge of a blade as a purchase: what it costs to have, and how long such an edge lasts. */
export interface EdgeOffer {
  readonly life: LifePosterior;
  /** What changing to it costs between jobs, and in mid-job: the blade or the regrind counted in. */
  readonly costs: ChangeCosts;
}

/** What an edge costs that has so many regrinds behind it. */
export interface EdgeCost {
  readonly regrinds: number;
  /** Mean cost per unit of exposure of this edge alone. */
  readonly costRate: number;
  /** Share of the draws in which it is cheaper than a new blade's first edge. Null for that one. */
  readonly cheaperThanNew: number | null;
  /** Long-run cost per unit of exposure when every blade is reground so often and then replaced. */
  readonly lifeRate: number;
}

export interface RegrindAdvice {
  /** Regrinds of one blade that cost least in the long run; 0: buy a new one each time. */
  readonly bestRegrinds: number;
  readonly edges: readonly EdgeCost[];
}

/**
 * Regrind or buy, by cost: how often to have a blade reground before a new one is bought. The first offer is the new
 * blade, the next its edge after one regrind, and so on up to what may be ground away. Each edge is changed at its own best
 * age; with n regrinds the long run costs
 *
 *   E_k[(N₀ + … + N_n)/(I₀ + … + I_n)],  N_g = c_p·R_g + c_f·F_g,  I_g the mean exposure of edge g
 *
 * so a regrind pays as long as the edge that it gives costs less per unit than the blade has cost so far.
 * Source: formula (renewal reward).
 */
export function regrindOrBuy(offers: readonly EdgeOffer[]): RegrindAdvice {
  invariant(offers.length > 0, 'regrindOrBuy requires at least the new blade');
  const count = offers[0]?.life.shape.length ?? 0;
  const [cost, exposure] = [new Float64Array(count), new Float64Array(count)];
  let first: Float64Array | undefined;
  const edges = offers.map(({ life, costs }, regrinds): EdgeCost => {
    const { age } = posteriorReplacementAge(cycleCurves(life), costs);
    const cycles = cyclesAt(life, age);
    const rates = cycles.exposure.map((lived, k) => costOfCycle(costs, cycles.failed[k] as number) / lived);
    for (let k = 0; k < count; k++) {
      cost[k] = (cost[k] as number) + costOfCycle(costs, cycles.failed[k] as number);
      exposure[k] = (exposure[k] as number) + (cycles.exposure[k] as number);
    }
    first ??= rates;
    return {
      regrinds,
      costRate: meanOf(rates),
      cheaperThanNew: regrinds === 0 ? null : shareBelow(rates, first),
      lifeRate: meanOf(cost.map((sum, k) => sum / (exposure[k] as number))),
    };
  });
  const best = edges.reduce((a, b) => (b.lifeRate < a.lifeRate ? b : a));
  return { bestRegrinds: best.regrinds, edges };
}

function costOfCycle({ plannedCost, failureCost }: ChangeCosts, failed: number): number {
  return plannedCost + (failureCost - plannedCost) * failed;
}

function meanOf(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function shareBelow(values: Float64Array, others: Float64Array): number {
  let below = 0;
  for (let k = 0; k < values.length; k++) if ((values[k] as number) < (others[k] as number)) below++;
  return below / values.length;
}
