import { invariant } from '../invariant';
import { findRoot } from '../numeric/root';
import { type Limits, normalMassWithin } from './conformity';

/** One error of a gauge: at how many days (or ends) of its life, measured how well, since which adjustment. */
export interface DriftPoint {
  /** Days, or ends: one of them throughout. */
  readonly at: number;
  readonly error: number;
  /** u, in the unit of the error. */
  readonly standardUncertainty: number;
  /** Counts up at every adjustment: the level starts anew, the drift does not. */
  readonly segment: number;
}

export interface DriftSettings {
  /** Half the width of the tolerance: the measure of what is much. */
  readonly halfWidth: number;
  /** How steep a drift may be before any is seen: standard deviation of a normal belief around none, per day (or end). */
  readonly slopeSd: number;
}

/** One supposition of how much a gauge scatters beside its drift, with what follows from it. */
interface DriftPart {
  readonly weight: number;
  readonly slope: number;
  readonly slopeVariance: number;
  /** The last segment: level at its middle, where that is, how well it is known. */
  readonly level: number;
  readonly middle: number;
  readonly levelVariance: number;
  readonly scatterVariance: number;
}

export type DriftPosterior = readonly DriftPart[];

const SUPPOSITIONS = 17;

/**
 * Drift posterior: what a gauge's errors so far say of how it drifts. A straight line in each segment between adjustments,
 * one slope for all, each error known as well as its certificate says, and beside it a scatter of the gauge itself, not
 * known: 17 suppositions from none to half the tolerance, believed as 1/(1 + (16·s/h)²) and weighed by how well each
 * explains the errors. Slope ~ N(0, slopeSd²) before any error is seen; levels flat. Symbols: h, half-width; s, scatter.
 * Domain: at least 1 point, u > 0, halfWidth > 0, slopeSd > 0. Source: formula, Bayesian linear regression (conjugate,
 * given s); checked against brute force in tests/fixtures/gauge.
 */
export function driftPosterior(points: readonly DriftPoint[], settings: DriftSettings): DriftPosterior {
  const { halfWidth, slopeSd } = settings;
  invariant(points.length >= 1, 'driftPosterior requires at least 1 point');
  invariant(halfWidth > 0 && slopeSd > 0, 'driftPosterior requires a width and a slope above 0');
  invariant(
    points.every((point) => point.standardUncertainty > 0),
    'driftPosterior requires uncertainties above 0',
  );
  const parts = Array.from({ length: SUPPOSITIONS }, (_, k) => {
    const scatter = (halfWidth * k) / 32;
    const fit = fitGiven(points, scatter, slopeSd);
    const belief = -Math.log1p((16 * scatter) ** 2 / halfWidth ** 2);
    return { ...fit, logWeight: fit.logWeight + belief };
  });
  const most = Math.max(...parts.map((part) => part.logWeight));
  const total = parts.reduce((sum, part) => sum + Math.exp(part.logWeight - most), 0);
  return parts.map(({ logWeight, ...part }) => ({ ...part, weight: Math.exp(logWeight - most) / total }));
}

function fitGiven(points: readonly DriftPoint[], scatter: number, slopeSd: number) {
  let logWeight = 0;
  let [precision, cross, residual] = [1 / slopeSd ** 2, 0, 0];
  let last = { segment: -Infinity, level: 0, middle: 0, levelVariance: 0 };
  for (const segment of new Set(points.map((point) => point.segment))) {
    const own = points.filter((point) => point.segment === segment);
    const weights = own.map((point) => 1 / (point.standardUncertainty ** 2 + scatter ** 2));
    const total = sumOf(weights);
    const middle = sumOf(own.map((point, i) => point.at * (weights[i] as number))) / total;
    const level = sumOf(own.map((point, i) => point.error * (weights[i] as number))) / total;
    own.forEach((point, i) => {
      const [weight, at, error] = [weights[i] as number, point.at - middle, point.error - level];
      logWeight += Math.log(weight) / 2;
      precision += weight * at * at;
      cross += weight * at * error;
      residual += weight * error * error;
    });
    logWeight -= Math.log(total) / 2;
    if (segment > last.segment) last = { segment, level, middle, levelVariance: 1 / total };
  }
  logWeight -= Math.log(precision) / 2 + (residual - cross ** 2 / precision) / 2;
  const { level, middle, levelVariance } = last;
  const slope = { slope: cross / precision, slopeVariance: 1 / precision };
  return { ...slope, level, middle, levelVariance, scatterVariance: scatter ** 2, logWeight };
}

function sumOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}

/** The normal figure that each supposition gives for the error at a day (or end), on from the last adjustment. */
function errorAt(part: DriftPart, at: number): { mean: number; sd: number } {
  const ahead = at - part.middle;
  const variance = part.levelVariance + ahead ** 2 * part.slopeVariance + part.scatterVariance;
  return { mean: part.level + part.slope * ahead, sd: Math.sqrt(variance) };
}

/**
 * Probability that the gauge's error lies within its limits at a day (or end). Domain: a posterior; limits in the unit of
 * the errors. Source: formula, the mixture of normals.
 */
export function probabilityWithin(posterior: DriftPosterior, at: number, limits: Limits): number {
  return posterior.reduce((sum, part) => sum + part.weight * normalMassWithin(errorAt(part, at), limits), 0);
}

/** The error at a day (or end) that stays below with probability p. Domain: 0 < p < 1. Source: formula, root of the mixture. */
export function driftQuantile(posterior: DriftPosterior, at: number, p: number): number {
  const normals = posterior.map((part) => errorAt(part, at));
  const low = Math.min(...normals.map(({ mean, sd }) => mean - 9 * sd));
  const high = Math.max(...normals.map(({ mean, sd }) => mean + 9 * sd));
  const found = findRoot((x) => probabilityWithin(posterior, at, { upper: x }) - p, { low, high });
  invariant(found.ok, 'a quantile lies between the tails');
  return found.root;
}

/** The slope the errors point to, per day (or end). Source: formula, mean of the mixture. */
export function meanSlope(posterior: DriftPosterior): number {
  return posterior.reduce((sum, part) => sum + part.weight * part.slope, 0);
}

/**
 * Longest interval: how many days (or ends) after `from` the gauge is still within its limits with the target probability
 * at every moment up to then, in whole steps; 0 when it is not so even at `from`; `most` at most.
 * Domain: 0 < target < 1, step > 0, most >= 0. Source: METHODS of the project: P(in tolerance at its end) meets the target.
 */
export function longestInterval(
  posterior: DriftPosterior,
  asked: {
    readonly from: number;
    readonly limits: Limits;
    readonly target: number;
    readonly step?: number;
    readonly most: number;
  },
): number {
  const { from, limits, target, step = 1, most } = asked;
  invariant(
    target > 0 && target < 1 && step > 0 && most >= 0,
    'longestInterval: target in (0, 1), step above 0',
  );
  let good = 0;
  if (probabilityWithin(posterior, from, limits) < target) return 0;
  while (good + step <= most && probabilityWithin(posterior, from + good + step, limits) >= target)
    good += step;
  return good;
}
