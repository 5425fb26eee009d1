import type { AsFound } from '../shop/calibration';
import type { IntervalMethod } from '../shop/gauge-entry';
import { driftPosterior, longestInterval } from './drift';
import { driftRates, type FeatureHistory } from './drift-points';
import { observedReliability, reliabilityInterval } from './reliability-interval';

/** One calibration as the review reads it. */
export interface IntervalResult {
  readonly onDay: string;
  readonly asFound: AsFound;
  /** Days since the calibration before; null for the first. */
  readonly days: number | null;
  /** Ends gauged since the calibration before; null where not counted. */
  readonly ends: number | null;
  /** |error as found| ÷ half-width of the first feature; null where not stated. */
  readonly share: number | null;
}

/** What one way of review says: so many days, or ends, or nothing, and why in one sentence. */
export interface MethodAdvice {
  readonly method: IntervalMethod;
  readonly days: number | null;
  readonly ends: number | null;
  readonly why: string;
}

/** The staircase's steps and its comfortable share of the tolerance. The 80 % is ILAC-G24's example, from memory; the steps are common practice, no source. */
export const STAIR_UP = 1.25;
export const STAIR_DOWN = 0.5;
export const COMFORTABLE_SHARE = 0.8;

const day = (days: number) => Math.floor(days);

/**
 * Staircase (ILAC-G24 method 1): found out, half the interval; the last two found in, and comfortably so where errors are
 * stated, a quarter longer; otherwise as it is. Source: published. ILAC-G24:2022 clause 6.2 (method), steps as above.
 */
export function staircaseAdvice(results: readonly IntervalResult[], intervalDays: number): MethodAdvice {
  const at = { method: 'staircase', ends: null } as const;
  const last = results.at(-1);
  const before = results.at(-2);
  if (last === undefined) return { ...at, days: null, why: 'No calibration on record yet.' };
  if (last.asFound === 'out')
    return { ...at, days: day(intervalDays * STAIR_DOWN), why: 'Found out last time: half the interval.' };
  const comfortable = (one: IntervalResult | undefined) =>
    one?.asFound === 'in' && (one.share === null || one.share <= COMFORTABLE_SHARE);
  if (comfortable(last) && comfortable(before))
    return {
      ...at,
      days: day(intervalDays * STAIR_UP),
      why: 'Found well in twice running: a quarter longer.',
    };
  const why =
    last.asFound === 'in' && !comfortable(last)
      ? 'Found in, but past four fifths of its limit: as it is.'
      : 'Two good results running are needed before it is stretched: as it is.';
  return { ...at, days: intervalDays, why };
}

/**
 * Control chart (ILAC-G24 method 2): from the changes between certificates, how soon the error reaches a limit when it
 * moves as fast as the mean change give or take two standard deviations. Source: published. ILAC-G24:2022 clause 6.3.
 */
export function controlChartAdvice(history: FeatureHistory | undefined): MethodAdvice {
  const at = { method: 'control-chart', ends: null } as const;
  const rates = history === undefined ? [] : driftRates(history.points);
  const now = history?.points.at(-1)?.error;
  if (history === undefined || now === undefined || rates.length < 2)
    return { ...at, days: null, why: 'Needs three certificates with errors as found.' };
  const mean = rates.reduce((sum, rate) => sum + rate, 0) / rates.length;
  const spread = Math.sqrt(rates.reduce((sum, rate) => sum + (rate - mean) ** 2, 0) / (rates.length - 1));
  const reach = (limit: number | null, rate: number) =>
    limit === null || rate * (limit - now) <= 0 ? Infinity : (limit - now) / rate;
  const days = Math.min(reach(history.upper, mean + 2 * spread), reach(history.lower, mean - 2 * spread));
  if (!Number.isFinite(days)) return { ...at, days: null, why: 'It hardly moves: no limit comes near.' };
  return { ...at, days: day(days), why: 'At the fastest change to be expected it reaches a limit then.' };
}

/**
 * In-use time (ILAC-G24 method 3), counted in ends: not beyond the fewest at which it was found out, four fifths of that,
 * nor, while none was out, beyond the most at which it was found in. Source: published. ILAC-G24:2022 clause 6.4; the four
 * fifths are common practice, no source.
 */
export function inUseAdvice(results: readonly IntervalResult[]): MethodAdvice {
  const at = { method: 'in-use', days: null } as const;
  const counted = results.flatMap((one) =>
    one.ends === null || one.ends === 0 ? [] : [{ ends: one.ends, asFound: one.asFound }],
  );
  const ends = (asFound: AsFound) => counted.filter((one) => one.asFound === asFound).map((one) => one.ends);
  const [out, good] = [ends('out'), ends('in')];
  if (out.length > 0)
    return {
      ...at,
      ends: day(COMFORTABLE_SHARE * Math.min(...out)),
      why: 'It was out after not many more ends.',
    };
  if (good.length > 0)
    return { ...at, ends: Math.max(...good), why: 'The most ends after which it was still found in.' };
  return { ...at, ends: null, why: 'No ends counted between two calibrations yet.' };
}

/** Checks in the shop since the last calibration. */
export interface ChecksSince {
  readonly passed: number;
  /** Days from the calibration to the first check that failed; null when none did. */
  readonly failedAfterDays: number | null;
}

/**
 * In-service checks (ILAC-G24 method 4, "black box"): a check that fails says the interval was too long by then; checks
 * that pass carry the interval in force. Source: published. ILAC-G24:2022 clause 6, method 4.
 */
export function inServiceAdvice(checks: ChecksSince, intervalDays: number): MethodAdvice {
  const at = { method: 'in-service-check', ends: null } as const;
  if (checks.failedAfterDays !== null)
    return {
      ...at,
      days: Math.max(1, checks.failedAfterDays),
      why: 'It failed a check in the shop by then.',
    };
  if (checks.passed >= 2)
    return {
      ...at,
      days: intervalDays,
      why: `${checks.passed} checks in the shop passed since: they carry the interval.`,
    };
  return { ...at, days: null, why: 'Too few checks in the shop since the last calibration.' };
}

/** Fewer intervals than this make no share worth a formula. Common practice, no source. */
const SPANS_LEAST = 5;

/**
 * Statistics (ILAC-G24 method 5): the share of intervals found in, held to an exponential reliability model.
 * Source: see `reliabilityInterval`.
 */
export function statisticsAdvice(results: readonly IntervalResult[], target: number): MethodAdvice {
  const at = { method: 'statistics', ends: null } as const;
  const spans = results.flatMap((one) =>
    one.days === null || one.asFound === 'not-taken' ? [] : [{ days: one.days, out: one.asFound === 'out' }],
  );
  const outCount = spans.filter((one) => one.out).length;
  if (spans.length < SPANS_LEAST)
    return {
      ...at,
      days: null,
      why: `Needs ${SPANS_LEAST} intervals with a result as found; there are ${spans.length}.`,
    };
  if (outCount === 0)
    return { ...at, days: null, why: 'None found out yet: a rate of faults cannot be told.' };
  const interval = spans.reduce((sum, one) => sum + one.days, 0) / spans.length;
  const observed = observedReliability({ outCount, count: spans.length });
  const days = day(reliabilityInterval({ interval, observed, target }));
  return { ...at, days, why: `${outCount} of ${spans.length} found out.` };
}

/** The longest that the review looks ahead: five years. */
export const REVIEW_DAYS_MOST = 1830;
/** Before any drift is seen: it might use up its tolerance within about two years, either way. Common practice, no source. */
export const FIRST_DRIFT_DAYS = 730;

/**
 * The shop’s own drift: longest interval at which the chance to be within limits at its end meets the target.
 * Source: see `driftPosterior` and `longestInterval`.
 */
export function driftAdvice(history: FeatureHistory | undefined, target: number): MethodAdvice {
  const at = { method: 'drift', ends: null } as const;
  if (history === undefined)
    return { ...at, days: null, why: 'No certificate states an error with its limits.' };
  const { halfWidth, lower, upper, points } = history;
  const posterior = driftPosterior(points, { halfWidth, slopeSd: halfWidth / FIRST_DRIFT_DAYS });
  const limits = { lower: lower ?? undefined, upper: upper ?? undefined };
  const from = points.at(-1)?.at ?? 0;
  const days = longestInterval(posterior, { from, limits, target, step: 5, most: REVIEW_DAYS_MOST });
  if (days === 0) return { ...at, days: null, why: noIntervalWords(history) };
  const why = `From ${points.length === 1 ? 'one error' : `${points.length} errors`} and their uncertainty: the chance to be in at its end meets the target up to then.`;
  return { ...at, days, why };
}

/** Why not even today meets the target: it stands too near a limit, or its errors jump about. */
function noIntervalWords({ points, upper, lower, halfWidth }: FeatureHistory): string {
  const last = points.at(-1)?.error ?? 0;
  const centre = upper !== null && lower !== null ? (upper + lower) / 2 : 0;
  return Math.abs(last - centre) > COMFORTABLE_SHARE * halfWidth
    ? 'As it was left it stands too near its limit: have it adjusted.'
    : 'It moves too unevenly: no interval meets the target by itself.';
}
