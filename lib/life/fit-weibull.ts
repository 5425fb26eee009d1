import { compensatedSum } from '../numeric/sum';
import { fitWeibullIntervals } from './fit-weibull-intervals';
import type { WeibullFit, WeibullSample } from './weibull-sample';

const MAX_ITERATIONS = 100;
/** A relative step this small leaves a miss of its cube. */
const LAST_STEP = 1e-5;

/**
 * Weibull maximum-likelihood fit of one group of lives, without priors: for charts, comparisons and outside checks.
 * Profile likelihood: with d worn, scale^shape = Σ t^shape/d, and the shape solves
 * 1/shape + mean ln t(worn) − Σ t^shape ln t/Σ t^shape = 0, by Halley's steps (Σ over all lives, one power of each per step;
 * each step cubes the miss, so one that moves the shape by less than a hundred-thousandth is the last).
 * Errors: `nothing-worn`, `lives-equal` (every worn life is the longest life: the shape grows without limit),
 * `age-not-positive` (a worn age of 0, or an age below 0), `not-identified` (intervals that settle no shape).
 * Source: formula (maximum likelihood).
 */
export function fitWeibull(sample: WeibullSample): WeibullFit {
  const { wornAt, workingAt, wornBetween = [] } = sample;
  if (!agesValid(sample)) return { ok: false, reason: 'age-not-positive' };
  if (wornAt.length + wornBetween.length === 0) return { ok: false, reason: 'nothing-worn' };
  if (wornBetween.length > 0) return fitWeibullIntervals(sample);
  const logs = logAges(wornAt, workingAt);
  const worn = wornAt.length;
  const spread = spreadOf(logs, worn);
  if (spread.shortestWorn === spread.longest) return { ok: false, reason: 'lives-equal' };
  const meanWorn = spread.sumWorn / worn;
  let shape = spread.sdWorn > 1e-3 ? 1.2 / spread.sdWorn : 1;
  let stoppedBy: 'converged' | 'cap' = 'cap';
  let iterations = 0;
  let sums = powerSums(logs, shape, spread.longest);
  while (iterations < MAX_ITERATIONS && stoppedBy === 'cap') {
    iterations++;
    const meanLog = sums.first / sums.zeroth;
    const next = nextShape(shape, 1 / shape + meanWorn - spread.longest - meanLog, sums);
    if (Math.abs(next - shape) <= LAST_STEP * shape) stoppedBy = 'converged';
    shape = next;
    sums = powerSums(logs, shape, spread.longest);
  }
  return { ok: true, ...figuresAt(shape, sums, spread, worn), iterations, stoppedBy };
}

/** Halley's step for the shape, kept within a quarter and four times what it was. */
function nextShape(shape: number, miss: number, { zeroth, first, second, third }: PowerSums): number {
  const [m1, m2, m3] = [first / zeroth, second / zeroth, third / zeroth];
  const slope = -1 / (shape * shape) - (m2 - m1 * m1);
  const bend = 2 / (shape * shape * shape) - (m3 - 3 * m1 * m2 + 2 * m1 * m1 * m1);
  const halley = 2 * slope * slope - miss * bend;
  const step = halley > slope * slope ? (-2 * miss * slope) / halley : -miss / slope;
  return Math.min(Math.max(shape + step, shape / 4), shape * 4);
}

interface PowerSums {
  readonly zeroth: number;
  readonly first: number;
  readonly second: number;
  readonly third: number;
}

interface Spread {
  readonly longest: number;
  readonly shortestWorn: number;
  readonly sumWorn: number;
  readonly sdWorn: number;
}

function agesValid({ wornAt, workingAt, wornBetween = [] }: WeibullSample): boolean {
  for (let i = 0; i < wornAt.length; i++)
    if (!((wornAt[i] as number) > 0 && Number.isFinite(wornAt[i]))) return false;
  for (let i = 0; i < workingAt.length; i++)
    if (!((workingAt[i] as number) >= 0 && Number.isFinite(workingAt[i]))) return false;
  return wornBetween.every(({ from, to }) => from >= 0 && to > from && Number.isFinite(to));
}

/** Log ages, the worn first; a life that has not begun (age 0) says nothing and is left out. */
function logAges(wornAt: ArrayLike<number>, workingAt: ArrayLike<number>): Float64Array {
  const logs = new Float64Array(wornAt.length + workingAt.length);
  let n = 0;
  for (let i = 0; i < wornAt.length; i++) logs[n++] = Math.log(wornAt[i] as number);
  for (let i = 0; i < workingAt.length; i++)
    if (workingAt[i] !== 0) logs[n++] = Math.log(workingAt[i] as number);
  return logs.subarray(0, n);
}

function spreadOf(logs: Float64Array, worn: number): Spread {
  let longest = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < logs.length; i++) longest = Math.max(longest, logs[i] as number);
  const ofWorn = logs.subarray(0, worn);
  const sumWorn = compensatedSum(ofWorn);
  let shortestWorn = Number.POSITIVE_INFINITY;
  let squares = 0;
  for (let i = 0; i < worn; i++) {
    shortestWorn = Math.min(shortestWorn, ofWorn[i] as number);
    squares += ((ofWorn[i] as number) - sumWorn / worn) ** 2;
  }
  return { longest, shortestWorn, sumWorn, sdWorn: Math.sqrt(squares / worn) };
}

/** Σ y^shape·(ln y)^j for j = 0 … 3, with y the age as a share of the longest. */
function powerSums(logs: Float64Array, shape: number, longest: number): PowerSums {
  let [zeroth, first, second, third] = [0, 0, 0, 0];
  for (let i = 0; i < logs.length; i++) {
    const log = (logs[i] as number) - longest;
    const power = Math.exp(shape * log);
    const once = power * log;
    const twice = once * log;
    zeroth += power;
    first += once;
    second += twice;
    third += twice * log;
  }
  return { zeroth, first, second, third };
}

/** Scale, log-likelihood and covariance at the fitted shape; H = (t/scale)^shape sums to the number worn. */
function figuresAt(shape: number, sums: PowerSums, spread: Spread, worn: number) {
  const logScale = spread.longest + Math.log(sums.zeroth / worn) / shape;
  const sumZWorn = shape * (spread.sumWorn - worn * logScale);
  const shift = spread.longest - logScale;
  const perUnit = worn / sums.zeroth;
  const sumHz = shape * perUnit * (sums.first + shift * sums.zeroth);
  const sumHzz =
    shape * shape * perUnit * (sums.second + 2 * shift * sums.first + shift * shift * sums.zeroth);
  const a = shape * shape * worn;
  const b = -shape * sumHz;
  const c = sumHz + sumHzz - sumZWorn;
  const determinant = a * c - b * b;
  return {
    shape,
    scale: Math.exp(logScale),
    logLik: worn * Math.log(shape) + sumZWorn - worn - spread.sumWorn,
    covariance: [c / determinant, -b / determinant, -b / determinant, a / determinant] as const,
  };
}
