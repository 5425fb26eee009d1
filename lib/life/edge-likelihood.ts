import { logOneMinusExp, logOnePlusExp } from '../numeric/log-exp';
import {
  addBend,
  addByHazard,
  addGradient,
  addOuter,
  type EdgeTerms,
  FIGURES,
  growthOf,
  type LifeEvidence,
  LOG_EXPOSURE,
  LOG_LN2,
  LOG_MEDIAN,
  LOG_RATIO,
  LOG_SHAPE,
} from './edge-terms';
import type { LifeLaw } from './life-law';
import { logLogisticTerms } from './log-logistic-terms';

export { type LifeEvidence, LOG_LN2, roomForTerms } from './edge-terms';

/**
 * Log-likelihood of one edge's evidence under a Weibull life of median m: H(X) = ln 2·(X/m)^β, z = ln H(X).
 *  beyond X:         −H
 *  exactly at X:     ln β + z − H, the density by log exposure (subtract ln X for the density by exposure)
 *  between X₁, X₂:   −H₁ + ln(1 − e^(−D)), D = H₂ − H₁ = H₁·((1 + Δ/X₁)^β − 1), without cancellation
 * `figures` = [ln β, ln m, ln X (or ln X₁), ln(Δ/X₁)]. An interval from zero is `between` with `fromZero`: its third
 * figure is ln X₂ and the fourth is not read. Writes into `out`. Source: formula.
 * Of a log-logistic life: `logLogisticTerms`.
 */
export function edgeTerms(
  evidence: LifeEvidence,
  figures: ArrayLike<number>,
  fromZero: boolean,
  out: EdgeTerms,
  law: LifeLaw = 'weibull',
): void {
  if (law === 'log-logistic') {
    logLogisticTerms(evidence, figures, fromZero, out);
    return;
  }
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
