import { lnGamma } from '../numeric/ln-gamma';

/** Weibull life of an edge: `scale` (the age by which 63.2 % are worn) in the same unit of exposure as every age. */
export interface Weibull {
  /** Above 1: wears with use; 1: fails by chance alone; below 1: early failures. */
  readonly shape: number;
  readonly scale: number;
}

/**
 * Cumulative hazard, H(t) = (t/scale)^shape.
 * Domain of every function here: shape > 0, scale > 0, age >= 0. Source: formula.
 * @example cumHazard({ shape: 2, scale: 100 }, 50) // => 0.25
 */
export function cumHazard({ shape, scale }: Weibull, age: number): number {
  return (age / scale) ** shape;
}

/**
 * Survival, S(t) = e^(−H(t)): the chance that an edge lasts beyond this age.
 * @example survival({ shape: 1, scale: 100 }, 100) // => 0.36787944117144233
 */
export function survival(life: Weibull, age: number): number {
  return Math.exp(-cumHazard(life, age));
}

/**
 * Cumulative distribution, F(t) = 1 − S(t), accurate for ages at which almost nothing has worn.
 * @example cdf({ shape: 1, scale: 1 }, 1e-20) // => 1e-20
 */
export function cdf(life: Weibull, age: number): number {
  return -Math.expm1(-cumHazard(life, age));
}

/**
 * Hazard, h(t) = (shape/scale)·(t/scale)^(shape − 1): wear-outs per unit of exposure among edges that got this far.
 * @example hazard({ shape: 2, scale: 100 }, 50) // => 0.01
 */
export function hazard({ shape, scale }: Weibull, age: number): number {
  return (shape / scale) * (age / scale) ** (shape - 1);
}

/**
 * Density, f(t) = h(t)·S(t).
 * @example density({ shape: 1, scale: 2 }, 0) // => 0.5
 */
export function density(life: Weibull, age: number): number {
  return hazard(life, age) * survival(life, age);
}

/**
 * Quantile: the age by which the share `p` of edges is worn (a B-life: B10 is p = 0.1). t = scale·(−ln(1 − p))^(1/shape).
 * Domain: 0 <= p <= 1; at 1 infinite.
 * @example quantile({ shape: 1, scale: 10 }, 0.5) // => 6.931471805599453
 */
export function quantile({ shape, scale }: Weibull, p: number): number {
  return scale * (-Math.log1p(-p)) ** (1 / shape);
}

/**
 * Mean life, scale·Γ(1 + 1/shape).
 * @example mean({ shape: 1, scale: 3 }) // => 3
 */
export function mean({ shape, scale }: Weibull): number {
  return scale * Math.exp(lnGamma(1 + 1 / shape));
}

/**
 * Median life, scale·(ln 2)^(1/shape).
 * @example medianOf({ shape: 1, scale: 10 }) // => 6.931471805599453
 */
export function medianOf({ shape, scale }: Weibull): number {
  return scale * Math.LN2 ** (1 / shape);
}

/**
 * Scale of the Weibull life with this shape and median: median/(ln 2)^(1/shape).
 * @example scaleFromMedian({ shape: 1, median: 6.931471805599453 }) // => 10
 */
export function scaleFromMedian({ shape, median }: { shape: number; median: number }): number {
  return median / Math.LN2 ** (1 / shape);
}

/**
 * Conditional survival: the chance that an edge already used for `age` lasts another `more`. S(age + more)/S(age).
 * For "will this die finish this job?". Without cancellation for an old edge and a short job.
 * @example conditionalSurvival({ shape: 1, scale: 100 }, { age: 70, more: 100 }) // => 0.36787944117144233
 */
export function conditionalSurvival(life: Weibull, { age, more }: { age: number; more: number }): number {
  return Math.exp(-hazardBetween(life, { age, more }));
}

/** Cumulative hazard from `age` to `age + more`: H(age)·((1 + more/age)^shape − 1). Source: formula. */
export function hazardBetween(life: Weibull, { age, more }: { age: number; more: number }): number {
  if (more === 0) return 0;
  if (age === 0 || more > age) return cumHazard(life, age + more) - cumHazard(life, age);
  return cumHazard(life, age) * Math.expm1(life.shape * Math.log1p(more / age));
}

/**
 * Conditional quantile: how much more an edge used for `age` lasts, passed with probability 1 − p.
 * R = age·((1 + E/H(age))^(1/shape) − 1) with E = −ln(1 − p). Domain: 0 <= p < 1.
 * @example residualQuantile({ shape: 1, scale: 10 }, { age: 500, p: 0.5 }) // => 6.931471805599453
 */
export function residualQuantile(life: Weibull, { age, p }: { age: number; p: number }): number {
  return residualAtHazard(life, { age, hazard: -Math.log1p(-p) });
}

/**
 * How much more exposure it takes an edge used for `age` to gather this much further cumulative hazard; with a unit
 * exponential figure as the hazard, a drawn remaining life. Written so that neither a young nor an old edge loses digits.
 * Domain: age >= 0, hazard >= 0. Source: formula.
 * @example residualAtHazard({ shape: 2, scale: 1 }, { age: 0, hazard: 4 }) // => 2
 */
export function residualAtHazard(life: Weibull, { age, hazard }: { age: number; hazard: number }): number {
  const gathered = cumHazard(life, age);
  if (hazard > gathered) return Math.max(0, life.scale * (gathered + hazard) ** (1 / life.shape) - age);
  return gathered === 0 ? 0 : age * Math.expm1(Math.log1p(hazard / gathered) / life.shape);
}

/** Below this share of the hazard gathered so far, a further one needs the form that does not lose its digits. */
const SMALL_SHARE = 1e-3;

/**
 * The same, from the log of the scale and the hazard gathered so far, (age/scale)^shape: for the inner loop over draws.
 * @example residualFromGathered({ shape: 2, logScale: 0, age: 3 }, 9, 16) // => 2
 */
export function residualFromGathered(
  { shape, logScale, age }: { shape: number; logScale: number; age: number },
  gathered: number,
  hazard: number,
): number {
  if (hazard > gathered * SMALL_SHARE)
    return Math.max(0, Math.exp(logScale + Math.log(gathered + hazard) / shape) - age);
  return gathered === 0 ? 0 : age * Math.expm1(Math.log1p(hazard / gathered) / shape);
}
