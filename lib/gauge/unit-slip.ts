import { ok, type Refusal, type Result, refuse } from '../result';
import type { Feature } from '../shop/calibration';

/** How many half-widths out an error may lie before somebody is asked whether it is a slip: common practice, no source. */
const FAR = 12;
/** A U beyond the whole tolerance can prove nothing; one of less than a thousandth of it no shop's laboratory states. */
const U_MOST = 1;
const U_LEAST = 0.001;

/**
 * Unit slips on a certificate: an error typed in mm where µm was meant (1000 times), in µm where inches were (25 400), or
 * a decimal place too many. Asks, and does not decide: an error really so large can be confirmed. All figures in the row's
 * own unit. Says nothing where there is no tolerance to hold a figure against.
 */
export function checkUnitSlip(row: Feature): Result<null, Refusal> {
  const half = halfWidthOf(row);
  if (half === null) return ok(null);
  for (const [field, error] of [
    ['asFoundError', row.asFoundError] as const,
    ['asLeftError', row.asLeftError] as const,
  ]) {
    if (error === null) continue;
    const out = Math.abs(error - (centreOf(row) ?? 0)) / half;
    if (out > FAR)
      return refuse(
        'unit',
        `An error of ${error} is ${Math.round(out)} times its limit. Is the unit right?`,
        field,
      );
  }
  const { expandedUncertainty: U } = row;
  if (U === null) return ok(null);
  if (U > 2 * half * U_MOST)
    return refuse(
      'unit',
      `An uncertainty of ${U} is wider than the limits. Is the unit right?`,
      'expandedUncertainty',
    );
  if (U > 0 && U < 2 * half * U_LEAST)
    return refuse(
      'unit',
      `An uncertainty of ${U} is very small for these limits. Is the unit right?`,
      'expandedUncertainty',
    );
  return ok(null);
}

/**
 * Half the width of a tolerance; the distance of the limit from no error where there is one limit; null where there is
 * none, or where the one limit is no error itself.
 * @example halfWidthOf({ lowerLimit: -3, upperLimit: 5 }) // => 4
 */
export function halfWidthOf({
  lowerLimit,
  upperLimit,
}: Pick<Feature, 'lowerLimit' | 'upperLimit'>): number | null {
  if (lowerLimit !== null && upperLimit !== null) return (upperLimit - lowerLimit) / 2;
  const size = Math.abs(upperLimit ?? lowerLimit ?? 0);
  return size > 0 ? size : null;
}

/** The middle of a tolerance with two limits. */
function centreOf({ lowerLimit, upperLimit }: Pick<Feature, 'lowerLimit' | 'upperLimit'>): number | null {
  return lowerLimit !== null && upperLimit !== null ? (lowerLimit + upperLimit) / 2 : null;
}
