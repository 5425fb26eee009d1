import { invariant } from '../invariant';
import type { ChangeCosts, ReplacementAge } from './change-costs';
import { CELLS, type CycleCurves } from './cycle-curves';

/** Below this share of the cost, changing early saves nothing worth naming. */
const LEAST_SAVING = 1e-4;

/**
 * Cost-optimal age over everything that is believed about a life: the least of E_k[(c_p·R + c_f·F)/∫R] over the curves.
 * Null, to be run to wear-out, where edges do not age in the balance of the draws or a change in mid-job costs no more.
 * Domain: costs > 0. Source: formula; parabola through the three lowest points.
 */
export function posteriorReplacementAge(curves: CycleCurves, costs: ChangeCosts): ReplacementAge {
  const { plannedCost, failureCost } = costs;
  invariant(plannedCost > 0 && failureCost > 0, 'posteriorReplacementAge requires costs above 0');
  const runCostRate = failureCost * curves.runChanges;
  const run = { age: null, costRate: runCostRate, runCostRate, saving: 0, survivalAtAge: null };
  if (failureCost <= plannedCost) return { ...run, runReason: 'failure-costs-no-more' };
  const rateAt = (i: number): number =>
    plannedCost * (curves.changes[i] as number) +
    (failureCost - plannedCost) * (curves.failures[i] as number);
  let best = 0;
  for (let i = 1; i < CELLS; i++) if (rateAt(i) < rateAt(best)) best = i;
  if (best === CELLS - 1 || !(rateAt(best) < runCostRate * (1 - LEAST_SAVING)))
    return { ...run, runReason: 'does-not-age' };
  const { shift, value } = best === 0 ? { shift: 0, value: rateAt(0) } : lowest(rateAt, best);
  const age = (curves.ages[CELLS - 1] as number) * ((best + 1 + shift) / CELLS) ** 2;
  return {
    age,
    runReason: null,
    costRate: value,
    runCostRate,
    saving: 1 - value / runCostRate,
    survivalAtAge: curveAt(curves.survival, curves, age),
  };
}

/** Long-run cost per unit of exposure when edges are changed at any one age: what a screen draws. */
export function posteriorCostRate(curves: CycleCurves, costs: ChangeCosts, age: number): number {
  const changes = curveAt(curves.changes, curves, age);
  return (
    costs.plannedCost * changes +
    (costs.failureCost - costs.plannedCost) * curveAt(curves.failures, curves, age)
  );
}

/** Lowest point of the parabola through a point and its neighbours, in steps from the middle one. */
function lowest(rateAt: (i: number) => number, i: number): { shift: number; value: number } {
  const [before, at, after] = [rateAt(i - 1), rateAt(i), rateAt(i + 1)];
  const bend = before - 2 * at + after;
  if (!(bend > 0)) return { shift: 0, value: at };
  const slope = (after - before) / 2;
  return { shift: -slope / bend, value: at - (slope * slope) / (2 * bend) };
}

function curveAt(curve: Float64Array, { ages }: CycleCurves, age: number): number {
  const at = CELLS * Math.sqrt(age / (ages[CELLS - 1] as number)) - 1;
  const low = Math.min(curve.length - 2, Math.max(0, Math.floor(at)));
  const share = Math.min(1, Math.max(0, at - low));
  return (curve[low] as number) * (1 - share) + (curve[low + 1] as number) * share;
}
