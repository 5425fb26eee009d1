import { dayNumber, dayOfMs } from '../../../lib/calendar';
import { ok, type Refusal, type Result, refuse } from '../../../lib/result';
import type { AcceptEnds } from '../../../lib/shop/acceptance-input';
import type { Env } from '../../ledger/ledger';

/** How long a device may have been cut off before its entries are no longer taken. */
const CUT_OFF_MS_MAX = 7 * 86_400_000;

/**
 * When the ends were gauged: now. Only a device that was cut off brings a moment of its own, at most a week back: what is
 * entered from memory is gauged again and entered as of now.
 */
export function gaugedMoment(
  { gaugedAtMs, gaugedOnDay }: Pick<AcceptEnds, 'gaugedAtMs' | 'gaugedOnDay'>,
  { nowMs, utcOffsetMinutes }: Env,
): Result<number, Refusal> {
  const atMs = Math.min(gaugedAtMs ?? nowMs, nowMs);
  const daysOff = Math.abs(dayNumber(gaugedOnDay) - dayNumber(dayOfMs(atMs, utcOffsetMinutes)));
  if (nowMs - atMs > CUT_OFF_MS_MAX || daysOff > 1)
    return refuse(
      'back-dated',
      'Ends are not accepted for a day that is past. Gauge them again and enter it now.',
    );
  return ok(atMs);
}
