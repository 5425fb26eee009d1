import { daysBetween } from '../calendar/day';
import type { Calibration } from '../shop/calibration';
import type { DriftPoint } from './drift';
import { type BaseFeature, type BaseUnit, inBaseUnit } from './gauge-unit';
import { halfWidthOf } from './unit-slip';

/** Where a certificate states no uncertainty, this share of the half-width is taken for U. Common practice, no source. */
const ASSUMED_U_SHARE = 0.2;

/** One measured feature of a gauge through all of its certificates, in one unit, with the limits last in force. */
export interface FeatureHistory {
  readonly feature: string;
  readonly unit: BaseUnit;
  readonly lower: number | null;
  readonly upper: number | null;
  readonly halfWidth: number;
  /** Day 0 of the points' `at`. */
  readonly firstDay: string;
  readonly points: readonly (DriftPoint & { readonly onDay: string })[];
}

/**
 * The history of the feature that stands first on the latest certificate, in days since the first one that states it. An
 * error as left that differs from the one found, or an adjustment, begins a new segment. Undefined where no certificate
 * states an error with its limits. Domain: calibrations in order of their days.
 */
export function featureHistory(calibrations: readonly Calibration[]): FeatureHistory | undefined {
  const latest = calibrations.flatMap((one) => one.features?.[0] ?? []).at(-1);
  if (latest === undefined) return undefined;
  const { feature, unit, lowerLimit: lower, upperLimit: upper } = inBaseUnit(latest);
  const halfWidth = halfWidthOf({ lowerLimit: lower, upperLimit: upper });
  if (halfWidth === null) return undefined;
  const rows = calibrations.flatMap((one) => {
    const row = one.features?.find((other) => other.feature.toLowerCase() === feature.toLowerCase());
    const base = row === undefined ? undefined : inBaseUnit(row);
    return base?.unit === unit ? [{ onDay: one.onDay, adjusted: one.adjusted === true, row: base }] : [];
  });
  const firstDay = rows[0]?.onDay ?? '';
  const points = pointsOf(rows, firstDay, halfWidth);
  return points.length === 0 ? undefined : { feature, unit, lower, upper, halfWidth, firstDay, points };
}

function pointsOf(
  rows: readonly { onDay: string; adjusted: boolean; row: BaseFeature }[],
  firstDay: string,
  halfWidth: number,
): (DriftPoint & { onDay: string })[] {
  const points: (DriftPoint & { onDay: string })[] = [];
  let segment = 1;
  for (const { onDay, adjusted, row } of rows) {
    const U = row.expandedUncertainty ?? 0;
    const expanded = U > 0 ? U : ASSUMED_U_SHARE * halfWidth;
    const at = daysBetween(firstDay, onDay);
    const point = { at, onDay, standardUncertainty: expanded / row.coverageFactor };
    const { asFoundError: found, asLeftError: left } = row;
    if (found !== null) points.push({ ...point, error: found, segment });
    const moved = left !== null && (adjusted || found === null || left !== found);
    if (!moved || left === null) continue;
    if (points.length > 0) segment += 1;
    points.push({ ...point, error: left, segment });
  }
  return points;
}

/**
 * Changes from one certificate to the next within a segment: how fast the error moved, per day.
 * Domain: points in order. Source: formula, difference quotient.
 */
export function driftRates(points: readonly DriftPoint[]): number[] {
  return points.flatMap((point, i) => {
    const before = points[i - 1];
    if (before === undefined || before.segment !== point.segment || point.at <= before.at) return [];
    return [(point.error - before.error) / (point.at - before.at)];
  });
}
