import { choleskyFactor, choleskyInverse, choleskyLogDet } from '../numeric/cholesky';
import { minimizeNewton, type NewtonResult, type Surface } from '../numeric/newton';
import type { EdgeKind } from '../shop/vocabulary';
import { type AxisSpread, axisSpread } from './axis-spread';
import { countEdges, countEdgesByPart } from './edge-counts';
import { type EdgeRow, edgeRowOf } from './edge-rows';
import { logExposure } from './exposure-sum';
import { type FirstGuess, guessAsNormal, orderGuesses } from './first-guess';
import { warningsOf } from './fit-warnings';
import { guessBelief } from './guess-belief';
import { lawIsRuledOut, logOddsOf } from './law-odds';
import type { FitPeak, LifeFit, LifeFitRefusal } from './life-fit';
import { beliefsOf, type LifeModel, logPosterior } from './log-posterior';
import { type EdgeHistory, orderHistories } from './observation';
import { layOut, type ParameterLayout, startOf } from './parameter-layout';
import { logPosteriorValues } from './posterior-values';
import type { LifePriors } from './priors';

export interface LifeFitInput {
  readonly kind: EdgeKind;
  /** Histories of any kind; only those of `kind` are read. */
  readonly histories: readonly EdgeHistory[];
  readonly priors: LifePriors;
  readonly guesses?: readonly FirstGuess[];
}

/**
 * Life fit: how long edges of one kind last, from every edge's history, the first guesses and the priors.
 * T ~ Weibull(shape, median), ln median = logMedian + sizeExponent·ln(OD/0.375 in) + part + regrinds·regrind, exposure
 * X = Σ base·factor(material)·dry·rework. Most probable figures by damped Newton with analytic derivatives; their spread
 * by Laplace's approximation. The order of the inputs does not matter, to the last bit.
 * Errors: `not-identified` when flat priors leave something that the data cannot settle. Throws on a bug in the input.
 */
export function fitLife(input: LifeFitInput): LifeFit | LifeFitRefusal {
  const histories = orderHistories(input.histories, input.kind);
  const guesses = orderGuesses(input.guesses ?? []);
  const layout = layOut(histories, guesses, input.priors);
  const rows = histories.flatMap((history) => edgeRowOf(history, layout) ?? []);
  const beliefs = [
    ...beliefsOf(layout.priors),
    ...guesses.map((guess) => guessBelief(guess, layout, input.priors)),
  ];
  const model = { size: layout.names.length, rows, beliefs };
  const highest = topOf(model, layout, startFor(layout, rows, guesses));
  if (highest === undefined) return notIdentified();
  const { found, ...peak } = highest;
  const { theta } = peak;
  const top = logPosterior(model, theta);
  return {
    ok: true,
    kind: input.kind,
    layout,
    mode: Object.fromEntries(layout.names.map((name, i) => [name, theta[i] as number])),
    ...withLean(peak, layout),
    logLogistic: logLogisticOf(peak, layout),
    logPosterior: top.value,
    logLik: top.logLik,
    iterations: found.iterations,
    stoppedBy: found.stoppedBy,
    warnings: warningsOf(histories, rows, layout, found.stoppedBy),
    counts: countEdges(histories),
    countsByPart: countEdgesByPart(histories),
    exposure: totalExposure(rows, theta),
    priors: input.priors,
    guesses,
  };
}

/** A peak whose lean has not been looked at yet. */
type Top = Omit<FitPeak, 'axisSpread' | 'model'> & { readonly model: LifeModel };

/** The top of a posterior, from a start; undefined when it has none. */
function topOf(
  model: LifeModel,
  layout: ParameterLayout,
  start: Float64Array,
): (Top & { readonly found: NewtonResult }) | undefined {
  const found = maximise(model, layout, start);
  const curvature = curvatureOf(found.surface, layout.free.length);
  if (curvature === undefined) return undefined;
  const theta = widen(layout, startOf(layout), found.x);
  const { covariance, logDet } = curvature;
  return { model, found, theta, covariance, logEvidence: -found.surface.value - logDet / 2 };
}

function withLean(top: Top, layout: ParameterLayout): FitPeak {
  return { ...top, axisSpread: leanOf(top.model, layout, top.theta, top.covariance) };
}

/** The same edges and beliefs with log-logistic lives, where the scatter of lives is a belief at all and the log leaves them a chance. */
function logLogisticOf(weibull: Top, layout: ParameterLayout): LifeFit['logLogistic'] {
  const chance = layout.logLogisticChance;
  if (chance === 0) return undefined;
  const top = topOf({ ...weibull.model, law: 'log-logistic' }, layout, weibull.theta);
  if (top === undefined || lawIsRuledOut(logOddsOf({ ...top, chance }, weibull))) return undefined;
  const { found: _, ...rest } = top;
  return { ...withLean(rest, layout), chance };
}

/** The lean of the posterior: its value at the probes of every axis, worked out together. */
function leanOf(
  model: LifeModel,
  { free }: ParameterLayout,
  theta: Float64Array,
  covariance: Float64Array,
): AxisSpread {
  return axisSpread(covariance, free.length, (offsets) => {
    const count = offsets.length;
    const columns = Array.from(theta, (value) => new Float64Array(count).fill(value));
    free.forEach((index, i) => {
      const column = columns[index] as Float64Array;
      offsets.forEach((offset, k) => {
        column[k] = (column[k] as number) + (offset[i] as number);
      });
    });
    return logPosteriorValues(model, { count, columns });
  });
}

function maximise(model: LifeModel, layout: ParameterLayout, start: Float64Array): NewtonResult {
  const { free } = layout;
  const evaluate = (x: Float64Array): Surface => {
    const at = logPosterior(model, widen(layout, start, x));
    const hessian = new Float64Array(free.length ** 2);
    free.forEach((a, i) => {
      free.forEach((b, j) => {
        hessian[i * free.length + j] = -(at.hessian[a * model.size + b] as number);
      });
    });
    return {
      value: -at.value,
      gradient: Float64Array.from(free, (a) => -(at.gradient[a] as number)),
      hessian,
    };
  };
  return minimizeNewton({ start: free.map((index) => start[index] as number), evaluate });
}

/** The whole set of figures: the free ones from x, the others from `base`. */
function widen(layout: ParameterLayout, base: Float64Array, x: Float64Array): Float64Array {
  const theta = Float64Array.from(base);
  layout.free.forEach((index, i) => {
    theta[index] = x[i] as number;
  });
  return theta;
}

/** Starts an unguided median at the middle of the guesses, or at the exposure per worn edge. */
function startFor(
  layout: ParameterLayout,
  rows: readonly EdgeRow[],
  guesses: readonly FirstGuess[],
): Float64Array {
  const theta = startOf(layout);
  const at = layout.indexOf.logMedian as number;
  if (layout.priors[at]?.form !== 'flat') return theta;
  if (guesses.length > 0) {
    theta[at] = guesses.reduce((sum, guess) => sum + guessAsNormal(guess).mean, 0) / guesses.length;
  } else if (rows.length > 0) {
    const worn = rows.filter((row) => row.evidence !== 'beyond').length;
    theta[at] = Math.log(totalExposure(rows, theta) / Math.max(1, worn));
  }
  return theta;
}

function totalExposure(rows: readonly EdgeRow[], theta: Float64Array): number {
  let total = 0;
  for (const row of rows) {
    for (const sum of [row.exposure, row.during]) {
      if (sum !== undefined) total += Math.exp(logExposure(sum, theta).log);
    }
  }
  return total;
}

/**
 * Inverse of the curvature at the top and the log of its determinant; undefined when some direction is not settled to within a
 * factor of e^1000.
 */
function curvatureOf(surface: Surface, n: number): { covariance: Float64Array; logDet: number } | undefined {
  if (!Number.isFinite(surface.value)) return undefined;
  const lower = choleskyFactor(surface.hessian, n);
  if (lower === undefined) return undefined;
  const inverse = choleskyInverse(lower, n);
  for (let i = 0; i < n; i++) if (!((inverse[i * n + i] as number) < 1e6)) return undefined;
  return { covariance: inverse, logDet: choleskyLogDet(lower, n) };
}

function notIdentified(): LifeFitRefusal {
  return {
    ok: false,
    reason: 'not-identified',
    sentence: 'The log does not hold enough worn edges to settle the life without a first guess.',
  };
}
