import { invariant } from '../invariant';
import { sortPositive } from '../numeric/sort-positive';
import type { Ensemble, ToolInHand } from './build-ensemble';
import type { CutCondition } from './kind-draws';

/** What is about to be cut: base exposure of one end (turns or mm³) and how it is cut. */
export interface Cut extends CutCondition {
  readonly exposurePerEnd: number;
}

/** Ends that a tool has left in each draw, shortest first. Every answer below is a count over these same draws. */
export interface EndsLeft {
  readonly sortedEnds: Float64Array;
}

/** Ends of this cut that the tool has left, draw by draw. Undefined for a tool or material that nobody knows. */
export function endsLeft(ensemble: Ensemble, toolId: ToolInHand['toolId'], cut: Cut): EndsLeft | undefined {
  invariant(cut.exposurePerEnd > 0 && Number.isFinite(cut.exposurePerEnd), 'an end costs exposure');
  const tool = ensemble.tool(toolId);
  const residual = ensemble.residualLife(toolId);
  const factor = tool && ensemble.wearFactor(tool.kind, cut);
  if (residual === undefined || factor === undefined) return undefined;
  const ends = new Float64Array(residual.length);
  for (let k = 0; k < ends.length; k++)
    ends[k] = (residual[k] as number) / (cut.exposurePerEnd * (factor[k] as number));
  return { sortedEnds: sortPositive(ends) };
}

/**
 * Safe ends: the most whole ends that are finished in at least the share `confidence` of the draws.
 * Domain: 0 < confidence <= 1.
 */
export function safeEnds({ sortedEnds }: EndsLeft, confidence = 0.9): number {
  invariant(confidence > 0 && confidence <= 1, 'confidence is above 0 and at most 1');
  const needed = Math.ceil(confidence * sortedEnds.length - 1e-9);
  return Math.floor(sortedEnds[sortedEnds.length - needed] as number);
}

/** Likely ends: as many as the tool finishes in half of the draws. */
export function likelyEnds(left: EndsLeft): number {
  return safeEnds(left, 0.5);
}

/** What a band holds of the futures. */
const BAND = 0.8;

/**
 * The 80 % band in whole ends, both counted in: nine draws in ten finish at least `low`, and of all whole numbers `high` is
 * the one with which low … high holds the share of the draws nearest to eight tenths (about one draw in ten goes past it).
 * Ends come whole, so a band from the tenth to the ninetieth percentile, both counted in, holds more than eight tenths, the more so
 * the fewer are left: with five ends left it is not 80 % but about 85. `low` stays the safe number, for a job is planned on it; the
 * upper end gives way. Where a single number holds more than eight tenths already, it is the band.
 * Source: formula (highest whole number nearest to the stated mass).
 */
export function bandEnds(left: EndsLeft): { low: number; high: number } {
  const { sortedEnds } = left;
  const count = sortedEnds.length;
  const low = safeEnds(left, 0.9);
  const short = shorterThan(sortedEnds, low);
  const reached = Math.min(count, Math.ceil(short + BAND * count - 1e-9));
  const wide = Math.floor(sortedEnds[reached - 1] as number);
  const held = (high: number): number => (shorterThan(sortedEnds, high + 1) - short) / count;
  const narrower = wide > low && BAND - held(wide - 1) < held(wide) - BAND;
  return { low, high: narrower ? wide - 1 : wide };
}

/** How many of the draws leave fewer ends than this. */
function shorterThan(sortedEnds: Float64Array, ends: number): number {
  let [low, high] = [0, sortedEnds.length];
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((sortedEnds[middle] as number) >= ends) high = middle;
    else low = middle + 1;
  }
  return low;
}

/**
 * Chance that the tool finishes so many ends: the share of draws in which it does. `standardError` is the Monte Carlo
 * error of that share, √(p(1 − p)/K), at most 0.011 for 2,048 draws (the evenly spread draws make it smaller still).
 */
export function probabilityFinishes(
  { sortedEnds }: EndsLeft,
  ends: number,
): { probability: number; standardError: number } {
  const count = sortedEnds.length;
  const probability = (count - shorterThan(sortedEnds, ends)) / count;
  return { probability, standardError: Math.sqrt((probability * (1 - probability)) / count) };
}
