import { ok, type Refusal, type Result, refuse } from '../result';
import type { AsFound, Feature } from '../shop/calibration';
import { checkUnitSlip } from './unit-slip';

/**
 * Whether the figures of a certificate agree with what is said of the gauge, and look like the right unit. Asks where they
 * do not: a slip is likelier than a gauge found in with an error beyond its limits. Nothing to say without limits.
 */
export function checkFigures(
  row: Feature,
  said: { readonly asFound: AsFound; readonly asLeft: 'in' | 'out' },
): Result<null, Refusal> {
  const slip = checkUnitSlip(row);
  if (!slip.ok) return slip;
  if (said.asFound === 'in' && isOutside(row.asFoundError, row))
    return refuse(
      'figures',
      'The error as found lies beyond its limits, yet it is said to be found in.',
      'asFoundError',
    );
  if (
    said.asFound === 'out' &&
    row.asFoundError !== null &&
    hasLimits(row) &&
    !isOutside(row.asFoundError, row)
  )
    return refuse(
      'figures',
      'The error as found lies within its limits, yet it is said to be found out.',
      'asFoundError',
    );
  if (said.asLeft === 'in' && isOutside(row.asLeftError, row))
    return refuse(
      'figures',
      'The error as left lies beyond its limits, yet it is said to be in.',
      'asLeftError',
    );
  return ok(null);
}

function hasLimits({ lowerLimit, upperLimit }: Feature): boolean {
  return lowerLimit !== null || upperLimit !== null;
}

/** Beyond a limit that exists. */
function isOutside(error: number | null, { lowerLimit, upperLimit }: Feature): boolean {
  if (error === null) return false;
  return (lowerLimit !== null && error < lowerLimit) || (upperLimit !== null && error > upperLimit);
}
