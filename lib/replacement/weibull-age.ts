import { invariant } from '../invariant';
import { cdf, hazard, mean, survival, type Weibull } from '../life/weibull';
import { gammaP } from '../numeric/gamma';
import { lnGamma } from '../numeric/ln-gamma';
import { findRoot } from '../numeric/root';
import type { ChangeCosts, ReplacementAge } from './change-costs';

/**
 * Mean exposure that an edge gets through when it is changed at age t or when it wears out, whichever comes first:
 * ∫₀ᵗ S(u) du = (scale/shape)·γ(1/shape, (t/scale)^shape). Domain: t >= 0. Source: formula (substitution v = (u/scale)^shape).
 * @example meanCycle({ shape: 1, scale: 2 }, 0) // => 0
 */
export function meanCycle({ shape, scale }: Weibull, age: number): number {
  const x = (age / scale) ** shape;
  if (x === 0) return age;
  return scale * Math.exp(lnGamma(1 + 1 / shape)) * gammaP(1 / shape, x);
}

/**
 * Long-run cost per unit of exposure when every edge is changed at `age`, or when it wears out before:
 *
 *   C(t) = (c_p·S(t) + c_f·F(t)) / ∫₀ᵗ S(u) du
 *
 * c_p a planned change, c_f a change in mid-job; t in the unit of `scale`. Domain: age > 0 (∞: run to wear-out).
 * Source: formula (renewal reward; Barlow and Hunter 1960).
 * @example costRate({ shape: 1, scale: 4 }, { plannedCost: 1, failureCost: 8 }, Infinity) // => 2
 */
export function costRate(life: Weibull, { plannedCost, failureCost }: ChangeCosts, age: number): number {
  if (age === Infinity) return failureCost / mean(life);
  return (plannedCost * survival(life, age) + failureCost * cdf(life, age)) / meanCycle(life, age);
}

/**
 * Cost-optimal age for changing an edge of known Weibull life. The one zero of
 *
 *   h(t)·∫₀ᵗ S(u) du − F(t) = c_p/(c_f − c_p)
 *
 * whose left side rises without bound where shape > 1. With shape ≤ 1 an older edge is no worse than a new one, and with
 * c_f ≤ c_p a change in mid-job costs no more than a planned one: then there is none, and the edge is run to wear-out.
 * Domain: costs > 0. Source: formula (Barlow and Hunter 1960).
 * @example weibullReplacementAge({ shape: 1, scale: 1 }, { plannedCost: 1, failureCost: 10 }).costRate // => 10
 */
export function weibullReplacementAge(life: Weibull, costs: ChangeCosts): ReplacementAge {
  const { plannedCost, failureCost } = costs;
  invariant(life.shape > 0 && life.scale > 0, 'weibullReplacementAge requires shape and scale above 0');
  invariant(plannedCost > 0 && failureCost > 0, 'weibullReplacementAge requires costs above 0');
  const runCostRate = costRate(life, costs, Infinity);
  const run = { age: null, costRate: runCostRate, runCostRate, saving: 0, survivalAtAge: null };
  if (failureCost <= plannedCost) return { ...run, runReason: 'failure-costs-no-more' };
  if (life.shape <= 1) return { ...run, runReason: 'does-not-age' };
  const age = life.scale * unitAge(life.shape, plannedCost / (failureCost - plannedCost));
  if (!Number.isFinite(age)) return { ...run, runReason: 'wears-out-first' };
  const best = Math.min(costRate(life, costs, age), runCostRate);
  return {
    age,
    runReason: null,
    costRate: best,
    runCostRate,
    saving: 1 - best / runCostRate,
    survivalAtAge: survival(life, age),
  };
}

/** Ages beyond this logarithm cannot be told from never. */
const LOG_AGE_MOST = 690;

/** The optimal age in units of the scale, found on a log scale. Infinite where it lies beyond all figures. */
function unitAge(shape: number, ratio: number): number {
  const life = { shape, scale: 1 };
  const miss = (logAge: number): number => {
    const age = Math.exp(logAge);
    return Math.log(hazard(life, age) * meanCycle(life, age) - cdf(life, age)) - Math.log(ratio);
  };
  // Small ages: the left side is (shape − 1)·t^shape in leading order.
  let low = Math.log(ratio / (shape - 1)) / shape;
  for (let step = 1; !(miss(low) < 0); step *= 2) low -= step;
  let high = low + 1;
  for (let step = 1; !(miss(high) > 0); step *= 2) {
    high += step;
    if (high > LOG_AGE_MOST) return Infinity;
  }
  const found = findRoot(miss, { low, high });
  return found.ok ? Math.exp(found.root) : Infinity;
}
