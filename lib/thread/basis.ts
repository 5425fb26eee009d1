import { invariant } from '../invariant';
import { type Fixed, fixedOf, overFixed, roundHalfUp, timesFixed } from '../numeric/fixed-decimal';
import { decimalRational, type Rational, rationalValue } from '../units/rational';
import { engagementFixed } from './engagement';
import { type ThreadSeries, threadSeries } from './unified-series';

/** Decimal places of the tables, and that many units to the inch. */
export const TABLE_PLACES = 4;
export const TABLE_UNITS = 10_000;

/** ⅜ H twice, and the full depths of a rounded and a flat root below the crest, in pitches. Source: published. ASME B1.1. */
const PITCH_LINE = fixedOf(0.64951905);
export const ROUNDED_ROOT = fixedOf(1.19078493);
export const FLAT_ROOT = fixedOf(1.08253175);

/** A thread whose limits are asked for. Hand does not enter: left and right have the same limits. */
export interface ThreadToLimit {
  /** D, nominal size: an exact fraction, or a decimal as the table prints it (0.2969). */
  readonly sizeIn: Rational | number;
  readonly tpi: number;
  /** Taken from the tables where it is left out; a pair that no table names is special (UNS). */
  readonly series?: ThreadSeries;
  /** LE, where the thread's real engagement is not the series' own. */
  readonly engagementIn?: number;
}

/** What the limits of both an external and an internal thread start from; whole numbers are ten-thousandths of an inch. */
export interface ThreadBasis {
  readonly series: ThreadSeries;
  readonly basicMajor: Fixed;
  readonly pitch: Fixed;
  readonly tpi: Fixed;
  readonly engagement: Fixed;
  readonly basicMajorUnits: number;
  readonly basicPitchUnits: number;
}

/** Basic sizes, series and engagement of a thread. The basic major diameter is the tables' own: four decimals, half up. */
export function threadBasis({ sizeIn, tpi, series, engagementIn }: ThreadToLimit): ThreadBasis {
  const exact = typeof sizeIn === 'number' ? decimalRational(sizeIn) : sizeIn;
  const size = rationalValue(exact);
  invariant(size >= 0.05 && size <= 6, 'thread limits require a size from 0.05 to 6 in');
  invariant(tpi >= 3 && tpi <= 100, 'thread limits require 3 to 100 threads per inch');
  const basicMajorUnits = roundHalfUp(overFixed(fixedOf(exact.num), fixedOf(exact.den)), TABLE_PLACES);
  const basicMajor = fixedOf(basicMajorUnits / TABLE_UNITS);
  const pitch = overFixed(fixedOf(1), fixedOf(tpi));
  const minor = basicMajor - timesFixed(ROUNDED_ROOT, pitch);
  invariant(minor > 0n, 'thread limits require a thread less deep than its radius');
  const named = series ?? threadSeries({ sizeIn: exact, tpi }) ?? 'UNS';
  invariant(engagementIn === undefined || engagementIn > 0, 'thread limits require an engagement above 0');
  return {
    series: named,
    basicMajor,
    pitch,
    tpi: fixedOf(tpi),
    engagement:
      engagementIn === undefined
        ? engagementFixed({ basicMajorIn: basicMajorUnits / TABLE_UNITS, tpi, series: named })
        : fixedOf(engagementIn),
    basicMajorUnits,
    basicPitchUnits: roundHalfUp(basicMajor - timesFixed(PITCH_LINE, pitch), TABLE_PLACES),
  };
}
