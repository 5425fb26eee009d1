import type { LifeFit } from '../life/life-fit';
import { logPosteriorValues } from '../life/posterior-values';
import { proposalDraws } from './proposal-draws';
import { shareWeights, systematicPicks } from './resample';

/** Edges times draws that are worth weighing: a small shop's posterior leans and is cheap, a large one's does neither. */
const WORK = 2 ** 18;
const FEWEST = 1024;
const MOST = 4096;
/** Below this many draws' worth the weights are no longer trusted in full. */
const FLOOR = 128;

/**
 * Draws of every figure of a life fit from its posterior: one array of `drawCount` values to each figure, in the order of
 * the fit's layout. Draws of the split-normal approximation are weighed against the exact posterior and resampled to equal
 * weight, so that every answer stays a count. Fixed points throughout: the same fit gives the same digits.
 * Source: formula (importance resampling; Rubin 1988, Geweke 1989).
 */
export function posteriorDraws(fit: LifeFit, drawCount: number): Float64Array[] {
  const { model, layout } = fit;
  if (model === undefined || layout.free.length === 0) return [...proposalDraws(fit, drawCount).columns];
  const count = proposalCount(model.rows.length);
  const { columns, logDensity } = proposalDraws(fit, count);
  const logWeights = logPosteriorValues(model, { count, columns }).map(
    (value, k) => value - (logDensity[k] as number),
  );
  const { shares } = shareWeights(logWeights, FLOOR);
  const picks = systematicPicks(
    shares,
    columns[layout.indexOf.logMedian as number] as Float64Array,
    drawCount,
  );
  return columns.map((column) => Float64Array.from(picks, (k) => column[k] as number));
}

function proposalCount(edges: number): number {
  let count = MOST;
  while (count > FEWEST && count * edges > WORK) count /= 2;
  return count;
}
