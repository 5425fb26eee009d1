import { edgeTerms, roomForTerms } from './edge-likelihood';
import { applyForm, type EdgeRow, type LinearForm } from './edge-rows';
import { logExposure } from './exposure-sum';
import type { LifeLaw } from './life-law';
import type { Prior } from './priors';

/** A belief about a weighted sum of figures: normal with this mean and spread. */
export interface NormalBelief {
  readonly form: LinearForm;
  readonly mean: number;
  readonly sd: number;
}

/** The fit's whole problem: figures, edges and beliefs. */
export interface LifeModel {
  readonly size: number;
  readonly rows: readonly EdgeRow[];
  readonly beliefs: readonly NormalBelief[];
  /** The law of the lives; absent: Weibull. */
  readonly law?: LifeLaw;
}

/** Log posterior (up to a constant) with its derivatives; `logLik` is the part that the edges contribute. */
export interface LogPosterior {
  readonly value: number;
  readonly logLik: number;
  readonly gradient: Float64Array;
  readonly hessian: Float64Array;
}

/** The normal priors of single figures as beliefs; flat and fixed ones say nothing here. */
export function beliefsOf(priors: readonly Prior[]): NormalBelief[] {
  return priors.flatMap((prior, i) =>
    prior.form === 'normal'
      ? [{ form: { indices: [i], coefficients: [1] }, mean: prior.mean, sd: prior.sd }]
      : [],
  );
}

/** Log-likelihood of all edges plus log density of all beliefs, with gradient and second derivatives. Source: formula. */
export function logPosterior(model: LifeModel, theta: Float64Array): LogPosterior {
  const gradient = new Float64Array(model.size);
  const hessian = new Float64Array(model.size * model.size);
  let logLik = 0;
  for (const row of model.rows) logLik += addRow({ row, law: model.law, theta, gradient, hessian });
  let value = logLik;
  for (const belief of model.beliefs) value += addBelief(belief, theta, gradient, hessian);
  return { value, logLik, gradient, hessian };
}

const HALF_LN_TWO_PI = 0.9189385332046727;
const FIGURES = 4;

function addBelief(
  belief: NormalBelief,
  theta: Float64Array,
  gradient: Float64Array,
  hessian: Float64Array,
): number {
  const { indices, coefficients } = belief.form;
  const miss = (applyForm(belief.form, theta) - belief.mean) / belief.sd;
  const n = gradient.length;
  for (let i = 0; i < indices.length; i++) {
    const a = indices[i] as number;
    const scaled = (coefficients[i] as number) / belief.sd;
    gradient[a] = (gradient[a] as number) - miss * scaled;
    for (let j = 0; j < indices.length; j++) {
      const at = a * n + (indices[j] as number);
      hessian[at] = (hessian[at] as number) - (scaled * (coefficients[j] as number)) / belief.sd;
    }
  }
  return -0.5 * miss * miss - Math.log(belief.sd) - HALF_LN_TWO_PI;
}

const terms = roomForTerms();
const figures = new Float64Array(FIGURES);
const bent = new Float64Array(FIGURES);
/** Derivatives of the four figures by each touched figure of the model, four to a figure. */
let slopes = new Float64Array(64 * FIGURES);

interface Addition {
  readonly row: EdgeRow;
  readonly law: LifeLaw | undefined;
  readonly theta: Float64Array;
  readonly gradient: Float64Array;
  readonly hessian: Float64Array;
}

/** Adds one edge, given that it lasted until the log began to follow it. */
function addRow(addition: Addition): number {
  const value = addEvidence(addition, 1);
  const { entered } = addition.row;
  return entered === undefined ? value : value - addEvidence({ ...addition, row: entered }, -1);
}

/** Adds `sign` times one edge's derivatives by its four figures, carried over to the model's figures by the chain rule. */
function addEvidence({ row, law, theta, gradient, hessian }: Addition, sign: 1 | -1): number {
  const exposure = logExposure(row.exposure, theta);
  const during = row.during === undefined ? undefined : logExposure(row.during, theta);
  figures[0] = theta[0] as number;
  figures[1] = applyForm(row.logMedian, theta);
  figures[2] = exposure.log;
  figures[3] = during === undefined ? 0 : during.log - exposure.log;
  edgeTerms(row.evidence, figures, row.fromZero, terms, law);
  if (sign < 0) turnRound();
  setSlopes(row, exposure.gradient, during?.gradient);
  spread(row.touched, gradient, hessian);
  const ratio = terms.gradient[3] as number;
  addBlock(
    hessian,
    gradient.length,
    row.exposure.params,
    exposure.hessian,
    (terms.gradient[2] as number) - ratio,
  );
  if (row.during !== undefined && during !== undefined) {
    addBlock(hessian, gradient.length, row.during.params, during.hessian, ratio);
  }
  return row.evidence === 'exactly' ? terms.value - row.logBase : terms.value;
}

function turnRound(): void {
  for (let i = 0; i < FIGURES; i++) terms.gradient[i] = -(terms.gradient[i] as number);
  for (let i = 0; i < FIGURES * FIGURES; i++) terms.hessian[i] = -(terms.hessian[i] as number);
}

function setSlopes(
  { touched, places, logMedian }: EdgeRow,
  byExposure: Float64Array,
  byDuring: Float64Array | undefined,
): void {
  const size = touched.length * FIGURES;
  if (slopes.length < size) slopes = new Float64Array(size * 2);
  slopes.fill(0, 0, size);
  slopes[0] = 1;
  for (let i = 0; i < places.logMedian.length; i++)
    addSlope(places.logMedian, i, 1, logMedian.coefficients[i] as number);
  for (let i = 0; i < places.exposure.length; i++) {
    addSlope(places.exposure, i, 2, byExposure[i] as number);
    if (byDuring !== undefined) addSlope(places.exposure, i, 3, -(byExposure[i] as number));
  }
  if (byDuring === undefined) return;
  for (let i = 0; i < places.during.length; i++) addSlope(places.during, i, 3, byDuring[i] as number);
}

function addSlope(places: readonly number[], i: number, figure: number, slope: number): void {
  const at = (places[i] as number) * FIGURES + figure;
  slopes[at] = (slopes[at] as number) + slope;
}

function spread(touched: readonly number[], gradient: Float64Array, hessian: Float64Array): void {
  const n = gradient.length;
  for (let i = 0; i < touched.length; i++) {
    const a = touched[i] as number;
    bent.fill(0);
    for (let figure = 0; figure < FIGURES; figure++) {
      const slope = slopes[i * FIGURES + figure] as number;
      if (slope === 0) continue;
      gradient[a] = (gradient[a] as number) + slope * (terms.gradient[figure] as number);
      for (let other = 0; other < FIGURES; other++) {
        bent[other] = (bent[other] as number) + slope * (terms.hessian[figure * FIGURES + other] as number);
      }
    }
    for (let j = 0; j < touched.length; j++) {
      let sum = 0;
      for (let other = 0; other < FIGURES; other++)
        sum += (bent[other] as number) * (slopes[j * FIGURES + other] as number);
      const at = a * n + (touched[j] as number);
      hessian[at] = (hessian[at] as number) + sum;
    }
  }
}

function addBlock(
  hessian: Float64Array,
  n: number,
  params: readonly number[],
  block: Float64Array,
  factor: number,
): void {
  const m = params.length;
  for (let a = 0; a < m; a++) {
    for (let b = 0; b < m; b++) {
      const at = (params[a] as number) * n + (params[b] as number);
      hessian[at] = (hessian[at] as number) + factor * (block[a * m + b] as number);
    }
  }
}
