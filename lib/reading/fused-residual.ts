import { logLogisticStep } from '../life/life-law';
import { residualFromGathered } from '../life/weibull';

/** One future of an edge, as far as the fusion needs it. */
export interface EdgeInDraw {
  readonly shape: number;
  readonly logScale: number;
  /** Exposure so far, in reference exposure. */
  readonly age: number;
  /** Log-logistic, S = 1/(1 + (t/scale)^shape), in place of Weibull, S = e^(−(t/scale)^shape). */
  readonly tailed?: boolean;
}

/**
 * All readings of an edge in one future, as a quadratic in v = T^(−q): Σ ((w − X^q·v)/σ)² = square·v² − 2·linear·v + constant.
 */
export interface ReadingSum {
  readonly square: number;
  readonly linear: number;
  /** q: how a reading grows with the share of life, (X/T)^q. */
  readonly power: number;
}

/** Cells of the grid over the life, evenly spaced in its logarithm from the present age to far beyond any likely life. */
const CELLS = 48;
/** Cumulative hazard from now at which the grid ends: one Weibull life in 10^15 lasts longer, one log-logistic life in 10^5. */
const LAST_HAZARD = 35;
const LAST_TAILED_HAZARD = 11.5;
/** Ages below this share of the furthest life start the grid no nearer to zero. */
const LEAST_START = 1e-5;

const lived = new Float64Array(CELLS + 1);
const weight = new Float64Array(CELLS);

/**
 * Remaining life of an edge, given what was seen of it: the `share` quantile of
 * p(T | age, readings) ∝ f(T)·1[T > age]·Π N(w; (X/T)^q, σ), by inverting its distribution on a grid: within a cell the life
 * keeps its Weibull law, and the readings count as at the cell's middle. A reading may lengthen a life as well as shorten it.
 * Domain: 0 < share < 1, shape > 0, age > 0. Source: formula (Bayes).
 */
export function fusedResidual(edge: EdgeInDraw, readings: ReadingSum, share: number): number {
  const { shape, logScale, age, tailed = false } = edge;
  const power = Math.exp(shape * (Math.log(age) - logScale));
  const furthest = age + residualOf(edge, tailed ? LAST_TAILED_HAZARD : LAST_HAZARD);
  const start = Math.max(age, furthest * LEAST_START);
  const step = Math.log(furthest / start) / CELLS;
  const total = weighCells(edge, { power, start, step }, readings);
  let wanted = share * total;
  let cell = 0;
  while (cell < CELLS - 1 && wanted > (weight[cell] as number)) wanted -= weight[cell++] as number;
  const within = Math.min(1, wanted / (weight[cell] as number) || 0);
  const survival = (lived[cell] as number) - within * ((lived[cell] as number) - (lived[cell + 1] as number));
  return residualOf(edge, -Math.log(survival));
}

/** Remaining life of an edge after so much further cumulative hazard. Source: formula. */
export function residualOf(edge: EdgeInDraw, hazard: number): number {
  const { shape, logScale, age } = edge;
  const power = age === 0 ? 0 : Math.exp(shape * (Math.log(age) - logScale));
  return residualFromGathered(edge, power, edge.tailed === true ? logLogisticStep(power, hazard) : hazard);
}

/** Writes the survival from now at every edge of the grid and the weight of every cell; returns the weights' sum. */
function weighCells(
  { shape, logScale, tailed }: EdgeInDraw,
  { power: gathered, start, step }: { power: number; start: number; step: number },
  { square, linear, power }: ReadingSum,
): number {
  const stretch = Math.exp(shape * step);
  const shrink = Math.exp(-power * step);
  let hazard = Math.exp(shape * (Math.log(start) - logScale));
  let v = start ** -power * Math.exp((-power * step) / 2);
  const best = Math.min(v, square > 0 ? linear / square : 0);
  const top = best * (square * best - 2 * linear);
  let total = 0;
  lived[0] = 1;
  for (let cell = 0; cell < CELLS; cell++) {
    hazard *= stretch;
    const beyond = tailed === true ? (1 + gathered) / (1 + hazard) : Math.exp(gathered - hazard);
    lived[cell + 1] = beyond;
    const mass = (lived[cell] as number) - beyond;
    const cellWeight = mass * Math.exp(-0.5 * (v * (square * v - 2 * linear) - top));
    weight[cell] = cellWeight;
    total += cellWeight;
    v *= shrink;
  }
  return total;
}
