import { lawIsRuledOut, logOddsOf } from '../life/law-odds';
import type { LifeFit } from '../life/life-fit';
import { logPosteriorValues } from '../life/posterior-values';
import { proposalDraws } from './proposal-draws';
import { shareWeights, systematicPicks } from './resample';
import { shuffledOrder } from './spread-points';

/** Edges times draws that are worth weighing: a small shop's posterior leans and is cheap, a large one's does neither. */
const WORK = 2 ** 18;
const FEWEST = 1024;
const MOST = 4096;
/** Below this many draws' worth the weights are no longer trusted in full. */
const FLOOR = 128;

/** The posterior of a life fit in draws of equal weight. */
export interface PosteriorDraws {
  /** One array to each figure, in the order of the fit's layout. */
  readonly figures: readonly Float64Array[];
  /** 1 in the draws in which lives are log-logistic, 0 where they are Weibull. */
  readonly logLogistic: Uint8Array;
}

/** Draws of every figure of a life fit from its posterior: the figures of `drawPosterior` alone. */
export function posteriorDraws(fit: LifeFit, drawCount: number): readonly Float64Array[] {
  return drawPosterior(fit, drawCount).figures;
}

/**
 * Draws from the posterior of a life fit. Draws of the split-normal approximation are weighed against the exact posterior and
 * resampled to equal weight, so that every answer stays a count. Where lives may be log-logistic, each law's draws take the
 * share that the log leaves it, belief × evidence, the evidence being the mean weight of its draws. Fixed points throughout:
 * the same fit gives the same digits.
 * Source: formula (importance resampling; Rubin 1988, Geweke 1989; averaging over models, Hoeting and others 1999).
 */
export function drawPosterior(fit: LifeFit, drawCount: number): PosteriorDraws {
  const { model, layout, logLogistic: other } = fit;
  if (model === undefined || layout.free.length === 0) {
    return { figures: [...proposalDraws(fit, drawCount).columns], logLogistic: new Uint8Array(drawCount) };
  }
  const count = proposalCount(model.rows.length);
  const weibull = () => weighed(fit, fit, { count, name: 'figures' });
  const tailed = (of: NonNullable<typeof other>, points: number) =>
    weighed(fit, of, { count: points, name: 'log-logistic' });
  if (other === undefined) return picked([weibull(), undefined], 0, { fit, drawCount });
  if (lawIsRuledOut(-logOddsOf(other, fit)))
    return picked([undefined, tailed(other, count)], 1, { fit, drawCount });
  const [first, second] = [weibull(), tailed(other, count / 4)];
  const odds = logOddsOf({ logEvidence: second.logEvidence, chance: other.chance }, first);
  return picked([first, second], 1 / (1 + Math.exp(-odds)), { fit, drawCount });
}

interface Weighed {
  readonly columns: readonly Float64Array[];
  readonly shares: Float64Array;
  readonly logEvidence: number;
}

/** Draws around one law's peak with their shares, and the log of that law's evidence. */
function weighed(
  { layout, kind }: LifeFit,
  peak: NonNullable<LifeFit['logLogistic']> | LifeFit,
  { count, name }: { count: number; name: string },
): Weighed {
  const { theta, covariance, axisSpread, model } = peak;
  const { columns, logDensity } = proposalDraws({ theta, covariance, axisSpread, layout, kind }, count, name);
  const values = model === undefined ? logDensity : logPosteriorValues(model, { count, columns });
  const logWeights = values.map((value, k) => value - (logDensity[k] as number));
  const { shares } = shareWeights(logWeights, FLOOR);
  return { columns, shares, logEvidence: logMean(logWeights) };
}

function logMean(logs: Float64Array): number {
  const most = logs.reduce((high, log) => Math.max(high, log), Number.NEGATIVE_INFINITY);
  return most + Math.log(logs.reduce((sum, log) => sum + Math.exp(log - most), 0) / logs.length);
}

/**
 * As many draws of either law as its share comes to, each law's resampled to equal weight by itself: were both laid side by side, two
 * evenly spread sets would interleave in step with even picks, which then fall on one of them all the time. Which draws are which
 * is shuffled by the kind, so that a die's law says nothing of a blade's.
 */
function picked(
  [weibull, tailed]: readonly [Weighed | undefined, Weighed | undefined],
  tailedShare: number,
  { fit: { layout, kind }, drawCount }: { fit: LifeFit; drawCount: number },
): PosteriorDraws {
  const tailedCount = Math.round(tailedShare * drawCount);
  const places =
    tailedCount > 0 && tailedCount < drawCount ? shuffledOrder(drawCount, `law:${kind}`) : undefined;
  const figures = layout.names.map(() => new Float64Array(drawCount));
  const logLogistic = new Uint8Array(drawCount);
  const fill = (law: Weighed | undefined, from: number, count: number, mark: number): void => {
    if (law === undefined || count === 0) return;
    const { columns, shares } = law;
    const along = columns[layout.indexOf.logMedian as number] as Float64Array;
    const picks = systematicPicks(shares, along, count);
    const placeOf = (i: number): number => (places === undefined ? from + i : (places[from + i] as number));
    figures.forEach((figure, at) => {
      const column = columns[at] as Float64Array;
      for (let i = 0; i < count; i++) figure[placeOf(i)] = column[picks[i] as number] as number;
    });
    for (let i = 0; i < count; i++) logLogistic[placeOf(i)] = mark;
  };
  fill(weibull, 0, drawCount - tailedCount, 0);
  fill(tailed, drawCount - tailedCount, tailedCount, 1);
  return { figures, logLogistic };
}

function proposalCount(edges: number): number {
  let count = MOST;
  while (count > FEWEST && count * edges > WORK) count /= 2;
  return count;
}
