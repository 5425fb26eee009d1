import { invariant } from '../invariant';
import type { ChangeCosts } from './change-costs';

/** When to change one edge that has cut already. */
export interface ToolReplacement {
  /** Exposure that it should still cut before it is changed, 0: at once; null: run it to wear-out. */
  readonly moreExposure: number | null;
  /** Share of the futures in which it wears out or is lost before. */
  readonly wearsOutFirst: number;
}

/**
 * Futures looked at together, as a share of all: the least of a sum over draws is where chance put it, the least of its
 * running mean is not.
 */
const WINDOW_SHARE = 1 / 40;

/**
 * When to change one edge with the age and the readings that it has: x that makes least
 *
 *   G(x) = E_k[c_p + (c_f − c_p)·1(R_k ≤ x) − C_k·min(x, R_k)]
 *
 * `residual`: R_k, what the edge has left in each future of the ensemble, so that all that was seen of it counts;
 * `costRates`: C_k, what a unit of exposure costs in the long run in that future. An edge that is kept while the next stretch
 * of it costs less than that rate is changed no sooner and no later than it should be. For a new edge of known life this
 * is the cost-optimal age, for one of age X what is left to it.
 * Domain: as many rates as residuals, at least 48. Source: formula (renewal reward; optimal stopping).
 */
export function toolReplacement(
  residual: Float64Array,
  costRates: Float64Array,
  { plannedCost, failureCost }: ChangeCosts,
): ToolReplacement {
  const count = residual.length;
  invariant(
    count === costRates.length && count >= 48,
    'toolReplacement requires a rate to each of 48 futures or more',
  );
  const run = { moreExposure: null, wearsOutFirst: 1 };
  if (failureCost <= plannedCost) return run;
  const order = Uint32Array.from({ length: count }, (_, k) => k).sort(
    (a, b) => (residual[a] as number) - (residual[b] as number),
  );
  const sums = runningCost(order, residual, costRates, failureCost - plannedCost);
  const half = Math.floor((count * WINDOW_SHARE) / 2);
  let window = 0;
  for (let i = 0; i < half; i++) window += sums[i] as number;
  let [best, least] = [-1, 0];
  for (let i = 0; i < count; i++) {
    window += (sums[i + half] ?? 0) - (sums[i - half - 1] ?? 0);
    const mean = window / (Math.min(count - 1, i + half) - Math.max(0, i - half) + 1);
    if (mean < least) [best, least] = [i, mean];
  }
  if (best < 0) return { moreExposure: 0, wearsOutFirst: 0 };
  if (best >= count - half - 1) return run;
  return { moreExposure: residual[order[best] as number] as number, wearsOutFirst: best / count };
}

/** K·(G(x) − G(0)) just before each residual, shortest first. */
function runningCost(
  order: Uint32Array,
  residual: Float64Array,
  costRates: Float64Array,
  extraCost: number,
): Float64Array {
  let alive = costRates.reduce((sum, rate) => sum + rate, 0);
  let [at, cost] = [0, 0];
  return Float64Array.from(order, (k, i) => {
    const until = residual[k] as number;
    cost -= alive * (until - at);
    const before = cost + i * extraCost;
    alive -= costRates[k] as number;
    at = until;
    return before;
  });
}
