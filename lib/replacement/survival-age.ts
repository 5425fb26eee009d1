import { invariant } from '../invariant';
import { findMinimum } from '../numeric/minimum';
import type { ChangeCosts, ReplacementAge } from './change-costs';

/** Cells into which the span of ages is cut to look for the lowest of several valleys. */
const CELLS = 400;
/** A saving below this share is what rounding makes, not a saving. */
const LEAST_SAVING = 1e-9;

/**
 * Cost-optimal age for changing an edge whose chance of lasting is any falling function: a normal life, a mixture, a curve
 * from the log. The lowest of C(t) = (c_p·S(t) + c_f·(1 − S(t))) / ∫₀ᵗ S over the whole span, wherever it lies.
 * `longestAge`: an age that practically none survives; what is left of S beyond it is not counted.
 * Domain: S(0) = 1 falling to about 0, costs > 0. Source: formula (renewal reward); Gauss and Legendre in each cell.
 * @example survivalReplacementAge((t) => Math.exp(-t), { plannedCost: 1, failureCost: 9 }, 60).age // => null
 */
export function survivalReplacementAge(
  survival: (age: number) => number,
  { plannedCost, failureCost }: ChangeCosts,
  longestAge: number,
): ReplacementAge {
  invariant(longestAge > 0 && Number.isFinite(longestAge), 'survivalReplacementAge requires a longest age');
  invariant(plannedCost > 0 && failureCost > 0, 'survivalReplacementAge requires costs above 0');
  const width = longestAge / CELLS;
  const lived = new Float64Array(CELLS + 1);
  for (let i = 0; i < CELLS; i++)
    lived[i + 1] = (lived[i] as number) + integral(survival, i * width, (i + 1) * width);
  const rateAt = (age: number): number => {
    const cell = Math.min(CELLS - 1, Math.floor(age / width));
    const cycle = (lived[cell] as number) + integral(survival, cell * width, age);
    const lasts = survival(age);
    return (plannedCost * lasts + failureCost * (1 - lasts)) / cycle;
  };
  const runCostRate = failureCost / (lived[CELLS] as number);
  const run = { age: null, costRate: runCostRate, runCostRate, saving: 0, survivalAtAge: null };
  if (failureCost <= plannedCost) return { ...run, runReason: 'failure-costs-no-more' };
  let best = 1;
  for (let i = 2; i <= CELLS; i++) if (rateAt(i * width) < rateAt(best * width)) best = i;
  const found = findMinimum(rateAt, {
    low: (best - 1) * width,
    high: Math.min(longestAge, (best + 1) * width),
  });
  if (best === CELLS || !(found.value < runCostRate * (1 - LEAST_SAVING)))
    return { ...run, runReason: 'does-not-age' };
  return {
    age: found.at,
    runReason: null,
    costRate: found.value,
    runCostRate,
    saving: 1 - found.value / runCostRate,
    survivalAtAge: survival(found.at),
  };
}

/** Nodes and weights of the five-point rule on −1 … 1. Source: formula (roots of the Legendre polynomial P₅). */
const INNER = Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3;
const OUTER = Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3;
const NODES = [-OUTER, -INNER, 0, INNER, OUTER] as const;
const INNER_WEIGHT = (322 + 13 * Math.sqrt(70)) / 900;
const OUTER_WEIGHT = (322 - 13 * Math.sqrt(70)) / 900;
const WEIGHTS = [OUTER_WEIGHT, INNER_WEIGHT, 128 / 225, INNER_WEIGHT, OUTER_WEIGHT] as const;

function integral(f: (x: number) => number, from: number, to: number): number {
  const half = (to - from) / 2;
  let sum = 0;
  for (let i = 0; i < NODES.length; i++)
    sum += (WEIGHTS[i] as number) * f(from + half * (1 + (NODES[i] as number)));
  return half * sum;
}
