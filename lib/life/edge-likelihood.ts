import { logOneMinusExp, logOnePlusExp } from '../numeric/log-exp';

/** What is known of one life: it went on beyond an exposure, ended exactly at it, or ended between two. */
export type LifeEvidence = 'beyond' | 'exactly' | 'between';

/** Positions of the four figures that one edge's likelihood depends on. */
export const LOG_SHAPE = 0;
export const LOG_MEDIAN = 1;
export const LOG_EXPOSURE = 2;
/** Log of (exposure in the row of the wear-out ÷ exposure before it). */
export const LOG_RATIO = 3;
const FIGURES = 4;

/** Log-likelihood of one edge with first and second derivatives (row-major 4 × 4) by the four figures. */
export interface EdgeTerms {
  value: number;
  readonly gradient: Float64Array;
  readonly hessian: Float64Array;
}

export function roomForTerms(): EdgeTerms {
  return { value: 0, gradient: new Float64Array(FIGURES), hessian: new Float64Array(FIGURES * FIGURES) };
}

export const LOG_LN2 = Math.log(Math.LN2);

/**
 * Log-likelihood of one edge's evidence under a Weibull life of median m: H(X) = ln 2·(X/m)^β, z = ln H(X).
 *  beyond X:         −H
 *  exactly at X:     ln β + z − H, the density by log exposure (subtract ln X for the density by exposure)
 *  between X₁, X₂:   −H₁ + ln(1 − e^(−D)), D = H₂ − H₁ = H₁·((1 + Δ/X₁)^β − 1), without cancellation
 * `figures` = [ln β, ln m, ln X (or ln X₁), ln(Δ/X₁)]. An interval from zero is `between` with `fromZero`: its third
 * figure is ln X₂ and the fourth is not read. Writes into `out`. Source: formula.
 */
export function edgeTerms(
  evidence: LifeEvidence,
  figures: ArrayLike<number>,
  fromZero: boolean,
  out: EdgeTerms,
): void {
  const [logShape, logMedian, logX] = [
    figures[LOG_SHAPE] as number,
    figures[LOG_MEDIAN] as number,
    figures[LOG_EXPOSURE] as number,
  ];
  const shape = Math.exp(logShape);
  const z = LOG_LN2 + shape * (logX - logMedian);
  out.gradient.fill(0);
  out.hessian.fill(0);
  if (evidence === 'between') {
    if (fromZero) fromZeroTerms(z, shape, out);
    else betweenTerms(z, shape, figures[LOG_RATIO] as number, out);
    return;
  }
  const hazard = Math.exp(z);
  const worn = evidence === 'exactly' ? 1 : 0;
  out.value = worn === 1 ? logShape + z - hazard : -hazard;
  out.gradient[LOG_SHAPE] = worn;
  addByHazard({ first: worn - hazard, second: -hazard, z, shape }, out);
}

function fromZeroTerms(z: number, shape: number, out: EdgeTerms): void {
  const chance = logChance(z);
  out.value = chance.value;
  addByHazard({ first: chance.first, second: chance.second, z, shape }, out);
}

/** Adds a term that depends on the figures through z alone: `first`, `second` its derivatives by z. */
function addByHazard(
  term: { first: number; second: number; z: number; shape: number },
  out: EdgeTerms,
): void {
  const { first, second, shape } = term;
  const byShape = term.z - LOG_LN2;
  addOuter(out, second, byShape, -shape, shape, 0);
  addGradient(out, first, byShape, -shape, shape, 0);
  addBend(out, first, byShape, shape);
}

function betweenTerms(z: number, shape: number, logRatio: number, out: EdgeTerms): void {
  const share = 1 / (1 + Math.exp(-logRatio));
  const logStretch = logOnePlusExp(logRatio);
  const x = shape * logStretch;
  const growth = growthOf(x);
  const slope = share / logStretch;
  const slopeBend = (share * (1 - share)) / logStretch - slope * slope;
  const chance = logChance(z + growth.value);
  const hazard = Math.exp(z);
  const byShape = z - LOG_LN2;
  out.value = chance.value - hazard;
  addGradient(out, -hazard, byShape, -shape, shape, 0);
  addOuter(out, -hazard, byShape, -shape, shape, 0);
  addBend(out, -hazard, byShape, shape);
  addGradient(out, chance.first, byShape + growth.first, -shape, shape, growth.first * slope);
  addOuter(out, chance.second, byShape + growth.first, -shape, shape, growth.first * slope);
  addBend(out, chance.first, byShape, shape);
  addOuter(out, chance.first * growth.second, 1, 0, 0, slope);
  const last = LOG_RATIO * FIGURES + LOG_RATIO;
  out.hessian[last] = (out.hessian[last] as number) + chance.first * growth.first * slopeBend;
}

/** M(q) = ln(1 − e^(−D)), D = e^q, and its derivatives by q. Source: formula. */
function logChance(q: number): { value: number; first: number; second: number } {
  if (q < -30) return { value: q, first: 1, second: 0 };
  const hazard = Math.exp(q);
  if (hazard > 700) return { value: 0, first: 0, second: 0 };
  const first = hazard / Math.expm1(hazard);
  return { value: logOneMinusExp(hazard), first, second: first * (1 + hazard / Math.expm1(-hazard)) };
}

/** G = ln(e^x − 1) and its derivatives by ln x. Source: formula. */
function growthOf(x: number): { value: number; first: number; second: number } {
  if (x < 1e-300) return { value: Math.log(x), first: 1, second: 0 };
  const first = -x / Math.expm1(-x);
  const value = x > 700 ? x : Math.log(Math.expm1(x));
  return { value, first, second: first * (1 - first * Math.exp(-x)) };
}

function addGradient(out: EdgeTerms, factor: number, s: number, m: number, l: number, d: number): void {
  const gradient = out.gradient;
  gradient[0] = (gradient[0] as number) + factor * s;
  gradient[1] = (gradient[1] as number) + factor * m;
  gradient[2] = (gradient[2] as number) + factor * l;
  gradient[3] = (gradient[3] as number) + factor * d;
}

const outer = new Float64Array(FIGURES);

/** Adds factor·vvᵀ, v = (s, m, l, d). */
function addOuter(out: EdgeTerms, factor: number, s: number, m: number, l: number, d: number): void {
  const hessian = out.hessian;
  outer[0] = s;
  outer[1] = m;
  outer[2] = l;
  outer[3] = d;
  for (let a = 0; a < FIGURES; a++) {
    const scaled = factor * (outer[a] as number);
    for (let b = 0; b < FIGURES; b++) {
      hessian[a * FIGURES + b] = (hessian[a * FIGURES + b] as number) + scaled * (outer[b] as number);
    }
  }
}

/** Adds factor times the second derivatives of z: by (s, s) z − ln ln 2, by (s, m) −β, by (s, l) β. */
function addBend(out: EdgeTerms, factor: number, byShape: number, shape: number): void {
  const hessian = out.hessian;
  const cross = factor * shape;
  hessian[0] = (hessian[0] as number) + factor * byShape;
  hessian[1] = (hessian[1] as number) - cross;
  hessian[4] = (hessian[4] as number) - cross;
  hessian[2] = (hessian[2] as number) + cross;
  hessian[8] = (hessian[8] as number) + cross;
}
