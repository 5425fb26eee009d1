import { logOnePlusExp } from '../numeric/log-exp';
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
import { gatheredBy, LOG_LOGISTIC_STRETCH } from './life-law';

/**
 * Log-likelihood of one edge's evidence under a log-logistic life of median m: b = √2·β, z = b·ln(X/m), A = ln(1 + e^z), S = e^(−A).
 *  beyond X:         −A
 *  exactly at X:     ln b + z − 2A, the density by log exposure
 *  between X₁, X₂:   −A₁ + ln(w/(1 + w)), w = e^(z + G)/(1 + e^z), G = ln((1 + Δ/X₁)^b − 1); from zero: z − A
 * Figures as in `edgeTerms`. z is 0 at the median, so what the adders call z − ln ln 2 is z here. Source: formula.
 */
export function logLogisticTerms(
  evidence: LifeEvidence,
  figures: ArrayLike<number>,
  fromZero: boolean,
  out: EdgeTerms,
): void {
  const shape = LOG_LOGISTIC_STRETCH * Math.exp(figures[LOG_SHAPE] as number);
  const z = shape * ((figures[LOG_EXPOSURE] as number) - (figures[LOG_MEDIAN] as number));
  const gathered = gatheredBy('log-logistic', z);
  const share = 1 / (1 + Math.exp(-z));
  const bend = share * (1 - share);
  const at = { z: z + LOG_LN2, shape };
  out.gradient.fill(0);
  out.hessian.fill(0);
  if (evidence === 'between' && !fromZero) {
    logLogisticBetween({ z, shape, share }, figures[LOG_RATIO] as number, out);
    out.value -= gathered;
    addByHazard({ first: -share, second: -bend, ...at }, out);
  } else if (evidence === 'between') {
    // ln(1 − S) = z − A.
    out.value = z - gathered;
    addByHazard({ first: 1 - share, second: -bend, ...at }, out);
  } else if (evidence === 'exactly') {
    out.value = Math.log(shape) + z - 2 * gathered;
    out.gradient[LOG_SHAPE] = 1;
    addByHazard({ first: 1 - 2 * share, second: -2 * bend, ...at }, out);
  } else {
    out.value = -gathered;
    addByHazard({ first: -share, second: -bend, ...at }, out);
  }
}

/** ln(1 − e^(−D)) = ln(w/(1 + w)), w = e^(z + G)/(1 + e^z): by y = ln w the slope is 1/(1 + w), the bend −w/(1 + w)². */
function logLogisticBetween(
  { z, shape, share }: { z: number; shape: number; share: number },
  logRatio: number,
  out: EdgeTerms,
): void {
  const step = 1 / (1 + Math.exp(-logRatio));
  const logStretch = logOnePlusExp(logRatio);
  const growth = growthOf(shape * logStretch);
  const slope = step / logStretch;
  const slopeBend = (step * (1 - step)) / logStretch - slope * slope;
  const y = z + growth.value - gatheredBy('log-logistic', z);
  const first = 1 / (1 + Math.exp(y));
  const second = -first * (1 - first);
  const left = 1 - share;
  const byShape = left * z + growth.first;
  out.value = -logOnePlusExp(-y);
  addGradient(out, first, byShape, -left * shape, left * shape, growth.first * slope);
  addOuter(out, second, byShape, -left * shape, left * shape, growth.first * slope);
  addOuter(out, -first * share * left, z, -shape, shape, 0);
  addBend(out, first * left, z, shape);
  addOuter(out, first * growth.second, 1, 0, 0, slope);
  const last = LOG_RATIO * FIGURES + LOG_RATIO;
  out.hessian[last] = (out.hessian[last] as number) + first * growth.first * slopeBend;
}
