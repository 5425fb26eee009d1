import { invariant } from '../invariant';
import type { ChangeCosts } from '../replacement/change-costs';

/** One edge under a rule: what it cut, and how it came to be changed; 'open' where it has lasted at least so long. */
export interface EdgeCycle {
  readonly ends: number;
  /** Exposure times the factor of the material: turns or mm³ of the reference material. */
  readonly wear: number;
  readonly end: 'planned' | 'mid-job' | 'open';
}

/**
 * What a unit of wear costs in the long run under a rule, from the edges that it was tried on:
 *
 *   (c_p·P(planned) + c_f·P(mid-job)) / E[wear of an edge]
 *
 * with the shares and the mean from the product-limit estimate, so that an edge that still cuts counts for having lasted so long and not
 * as if it had been free. Where the longest of all still cut, they are taken to be changed there. Null where no edge has ended.
 * Domain: wear >= 0, costs > 0. Source: formula (renewal reward; Kaplan and Meier 1958; Aalen and Johansen 1978 for the
 * shares by cause; Efron's 1967 tail).
 */
export function costPerWear(
  cycles: readonly EdgeCycle[],
  { plannedCost, failureCost }: ChangeCosts,
): number | null {
  invariant(plannedCost > 0 && failureCost > 0, 'costPerWear requires costs above 0');
  const rows = [...cycles].sort(
    (a, b) => a.wear - b.wear || Number(a.end === 'open') - Number(b.end === 'open'),
  );
  if (rows.every(({ end }) => end === 'open')) return null;
  let [lasts, mean, cost, from] = [1, 0, 0, 0];
  rows.forEach(({ wear, end }, i) => {
    mean += lasts * (wear - from);
    from = wear;
    if (end === 'open') return;
    const share = lasts / (rows.length - i);
    cost += share * (end === 'planned' ? plannedCost : failureCost);
    lasts -= share;
  });
  return mean > 0 ? (cost + lasts * plannedCost) / mean : null;
}
