import { daysBetween } from '../calendar/day';
import type { IntervalMethod } from '../shop/gauge-entry';
import { type DriftPosterior, driftPosterior, probabilityWithin } from './drift';
import { type FeatureHistory, featureHistory } from './drift-points';
import type { GaugeEvidence } from './evidence';
import {
  controlChartAdvice,
  driftAdvice,
  FIRST_DRIFT_DAYS,
  type IntervalResult,
  inServiceAdvice,
  inUseAdvice,
  type MethodAdvice,
  staircaseAdvice,
  statisticsAdvice,
} from './interval-methods';

/** A gauge as its interval is reviewed. */
export interface ReviewFacts {
  /** Its calibrations and checks, in the order of their days. */
  readonly evidence: readonly GaugeEvidence[];
  /** The interval in force; null where nobody has set one and no due day tells. */
  readonly intervalDays: number | null;
  /** Ends gauged with it, by day. */
  readonly use: readonly { readonly onDay: string; readonly ends: number }[];
  /** How likely it shall be within its limits at the end of its interval. */
  readonly target: number;
}

export interface IntervalReview {
  readonly results: readonly IntervalResult[];
  readonly history: FeatureHistory | undefined;
  readonly posterior: DriftPosterior | undefined;
  /** The five published ways, then the drift of the shop’s own results. */
  readonly advice: readonly MethodAdvice[];
  /** What follows when the most cautious of them is heard: never longer than any of them says. Undefined: keep it. */
  readonly proposal:
    | { readonly days: number; readonly method: IntervalMethod; readonly why: string }
    | undefined;
}

/** Fewer as-found results than this propose nothing longer. Common practice, no source. */
const RESULTS_LEAST = 2;

/**
 * Interval review: what the shop's own results say of how long a calibration of this gauge is good for, by each of the
 * published ways side by side. Proposes the shortest that any of them gives; a longer interval than the one in force only
 * on two results as found. It decides nothing. Domain: 0 < target < 1. Source: ILAC-G24:2022 / OIML D 10:2022.
 */
export function reviewInterval({ evidence, intervalDays, use, target }: ReviewFacts): IntervalReview {
  const calibrations = evidence.flatMap(({ calibration }) => (calibration === null ? [] : [calibration]));
  const history = featureHistory(calibrations);
  const results = resultsOf(evidence, use);
  const posterior = history && driftPosterior(history.points, driftSettings(history));
  const inForce = intervalDays === null ? [] : [intervalDays];
  const advice = [
    ...inForce.map((days) => staircaseAdvice(results, days)),
    controlChartAdvice(history),
    inUseAdvice(results),
    ...inForce.map((days) => inServiceAdvice(checksSince(evidence), days)),
    statisticsAdvice(results, target),
    driftAdvice(history, target),
  ];
  return { results, history, posterior, advice, proposal: propose(advice, results, intervalDays) };
}

/** How steep a drift may be before any is seen, for a feature of this width. */
export function driftSettings({ halfWidth }: Pick<FeatureHistory, 'halfWidth'>) {
  return { halfWidth, slopeSd: halfWidth / FIRST_DRIFT_DAYS };
}

/**
 * How likely the gauge is within its limits so many days after its last calibration. Undefined where no certificate states
 * an error with its limits.
 */
export function chanceAfterDays(
  review: Pick<IntervalReview, 'history' | 'posterior'>,
  days: number,
): number | undefined {
  const { history, posterior } = review;
  const last = history?.points.at(-1);
  if (history === undefined || posterior === undefined || last === undefined) return undefined;
  const limits = { lower: history.lower ?? undefined, upper: history.upper ?? undefined };
  return probabilityWithin(posterior, last.at + days, limits);
}

function resultsOf(evidence: readonly GaugeEvidence[], use: ReviewFacts['use']): IntervalResult[] {
  const done = evidence.filter(({ kind }) => kind === 'calibration');
  return done.map(({ onDay, asFound, calibration }, i) => {
    const before = done[i - 1]?.onDay;
    const history = calibration === null ? undefined : featureHistory([{ ...calibration, adjusted: false }]);
    const row = calibration?.features?.[0];
    const found = row?.asFoundError === null ? undefined : history?.points[0];
    const ends = use
      .filter((one) => (before === undefined || one.onDay > before) && one.onDay <= onDay)
      .reduce((sum, one) => sum + one.ends, 0);
    return {
      ...{ onDay, asFound, ends: before === undefined && ends === 0 ? null : ends },
      days: before === undefined ? null : daysBetween(before, onDay),
      share: found === undefined || history === undefined ? null : shareOf(found.error, history),
    };
  });
}

/** How much of the tolerance an error uses up: 1 at a limit. */
function shareOf(error: number, { lower, upper, halfWidth }: FeatureHistory): number {
  const centre = lower !== null && upper !== null ? (lower + upper) / 2 : 0;
  return Math.abs(error - centre) / halfWidth;
}

function checksSince(evidence: readonly GaugeEvidence[]) {
  const at = evidence.findLastIndex(({ kind }) => kind === 'calibration');
  const since = evidence.slice(at + 1).filter(({ qualifies }) => qualifies);
  const failed = since.find(({ asFound }) => asFound === 'out');
  const from = evidence[at]?.onDay;
  return {
    passed: since.filter(({ asFound }) => asFound === 'in').length,
    failedAfterDays: failed === undefined || from === undefined ? null : daysBetween(from, failed.onDay),
  };
}

function propose(
  advice: readonly MethodAdvice[],
  results: readonly IntervalResult[],
  intervalDays: number | null,
): IntervalReview['proposal'] {
  const speaking = advice.flatMap((one) => (one.days === null ? [] : [{ ...one, days: one.days }]));
  const shortest = speaking.reduce<(typeof speaking)[number] | undefined>(
    (best, one) => (best === undefined || one.days < best.days ? one : best),
    undefined,
  );
  if (shortest === undefined || shortest.days === intervalDays) return undefined;
  const days = roundDown(shortest.days);
  const known = results.filter(({ asFound }) => asFound !== 'not-taken').length;
  if (days < 1 || days === intervalDays) return undefined;
  if (intervalDays !== null && days > intervalDays && known < RESULTS_LEAST) return undefined;
  return { days, method: shortest.method, why: shortest.why };
}

/** Down to what one would write on a card: whole days below 30, then fives, from 100 on tens. */
function roundDown(days: number): number {
  const step = days < 30 ? 1 : days < 100 ? 5 : 10;
  return Math.floor(days / step) * step;
}
