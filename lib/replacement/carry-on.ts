import { invariant } from '../invariant';
import type { ChangeCosts } from './change-costs';

/** Whether an edge goes on into the work in hand or is changed first, in money. */
export interface CarryOn {
  /** Share of the futures in which it finishes the work. */
  readonly finishes: number;
  /** What the work would take out of any edge, at the long-run cost of wear: E[C·w]. */
  readonly workCost: number;
  /** What it takes out of this one on average, which may not last: E[C·min(R, w)]. */
  readonly usedCost: number;
  /** What a change in mid-job costs beyond a planned one: c_f − c_p. */
  readonly extraCost: number;
  /** Chance to finish below which a change first costs less, 0 to 1: 1 − usedCost ÷ extraCost. */
  readonly breakEven: number;
  readonly changeFirst: boolean;
}

/**
 * Whether an edge is changed before the work in hand. Going on costs (c_f − c_p)·P(R < w) more than a planned change after the work
 * does; it cuts min(R, w) with an edge that is there, which with the edges to come costs C a unit. So it is changed first where
 *
 *   (c_f − c_p)·P(R < w) > E[C·min(R, w)]    that is, where P(R ≥ w) < p* = 1 − E[C·min(R, w)] ÷ (c_f − c_p)
 *
 * R_k what the edge has left in draw k, w_k what the work takes out of it (both exposure), C_k the long-run cost of a unit of
 * exposure under the best age of change (`longRunRates`), c_p a planned change, c_f one in mid-job, one currency unit. An edge
 * that costs dearly by the end is kept at poor odds; one whose failure costs dearly is changed at good ones.
 * For pieces of work of one size and a wear that rises with age this rule, with C the least rate that such work allows, is the
 * optimal policy. Domain: as many figures in each array, at least 1; costs > 0; exposure > 0.
 * Source: formula (age replacement, Barlow and Hunter 1960, for C; one-step look-ahead, Chow and Robbins 1961, and
 * marginal cost, Berg 1980, for the comparison: both from memory).
 */
export function carryOn(
  residual: ArrayLike<number>,
  work: ArrayLike<number>,
  costRates: ArrayLike<number>,
  { plannedCost, failureCost }: ChangeCosts,
): CarryOn {
  const count = residual.length;
  invariant(
    count > 0 && work.length === count && costRates.length === count,
    'carryOn requires a work and a rate to each of 1 future or more',
  );
  invariant(plannedCost > 0 && failureCost > 0, 'carryOn requires costs above 0');
  let [done, used, whole] = [0, 0, 0];
  for (let k = 0; k < count; k++) {
    const [left, takes, rate] = [residual[k] as number, work[k] as number, costRates[k] as number];
    if (left >= takes) done++;
    used += rate * Math.min(left, takes);
    whole += rate * takes;
  }
  const extraCost = failureCost - plannedCost;
  const [finishes, usedCost] = [done / count, used / count];
  const breakEven = extraCost <= 0 ? 0 : Math.max(0, 1 - usedCost / extraCost);
  return {
    ...{ finishes, usedCost, extraCost, breakEven, workCost: whole / count },
    changeFirst: finishes < breakEven,
  };
}

/**
 * The chance to finish at which going on and changing first cost the same, from what the work is worth and what a failure
 * costs more, as a newsvendor's critical ratio:
 *
 *   p* = C_u ÷ (C_u + C_o),  C_o = V (life thrown away by a change too early),  C_u = D − m·V (a change too late)
 *
 * V the cost of the life that the work takes out of an edge, D = c_f − c_p, m the share of the work that is cut by an edge that fails
 * in it (half on average where nothing is known). 0 where C_u ≤ 0: it is never changed first. The same as `carryOn` where C is one
 * figure. Domain: V > 0, 0 ≤ m ≤ 1. Source: formula (critical ratio of the newsvendor problem, Arrow, Harris and Marschak 1951).
 * @example breakEvenChance({ workCost: 20, extraCost: 50 }) // => 0.6666666666666666
 */
export function breakEvenChance({
  workCost,
  extraCost,
  cutShare = 0.5,
}: {
  readonly workCost: number;
  readonly extraCost: number;
  readonly cutShare?: number;
}): number {
  invariant(workCost > 0 && cutShare >= 0 && cutShare <= 1, 'breakEvenChance requires work that costs');
  const underage = extraCost - cutShare * workCost;
  return underage <= 0 ? 0 : underage / (underage + workCost);
}
