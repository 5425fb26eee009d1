import { dayOfMs } from '../calendar/day';
import { ok, type Refusal, type Result, refuse } from '../result';
import type { GaugeCheck } from '../shop/gauge-entry';
import { TOOL_STATE_LABEL, type ToolState } from '../shop/vocabulary';
import { canCheckOn, type MasterCandidate } from './master-of';

/** The master of a check, with where it stands. */
export interface Master extends MasterCandidate {
  readonly state: ToolState;
  readonly dueOnDay: string | null;
}

/**
 * Whether a check may be written down as it was made. One that is to count as evidence names its master, and the master
 * was in date, of the right kind and size, and not set aside: a check on a doubtful master shows nothing.
 */
export function decideCheck(
  gauge: MasterCandidate,
  check: Pick<GaugeCheck, 'onDay' | 'qualifies' | 'againstToolId'>,
  master: Master | undefined,
): Result<null, Refusal> {
  if (check.againstToolId === null)
    return check.qualifies
      ? refuse('master', 'Name the master it was checked on, or say that the check does not count.', AT)
      : ok(null);
  if (master === undefined) return refuse('master', `No tool ${check.againstToolId} is in the record.`, AT);
  if (!canCheckOn(gauge, master))
    return refuse(
      'master',
      `${gauge.id} cannot be checked on ${master.id}: another kind or another size.`,
      AT,
    );
  if (!check.qualifies) return ok(null);
  if (master.state === 'quarantined' || master.state === 'scrapped' || master.state === 'lost')
    return refuse(
      'master',
      `${master.id} is ${TOOL_STATE_LABEL[master.state]}; a check on it does not count.`,
      AT,
    );
  if (master.dueOnDay === null || master.dueOnDay < check.onDay)
    return refuse('master', `${master.id} was out of date itself; a check on it does not count.`, AT);
  return ok(null);
}

const AT = 'againstToolId';
/** The widest that a shop's wall clock is ahead of UTC. */
const AHEAD_MINUTES = 14 * 60;

/**
 * Whether a day has come, anywhere on Earth, by a moment: what was measured was not measured tomorrow.
 * @example hasDayCome('2026-03-05', 1772438400000) // => false
 */
export function hasDayCome(day: string, nowMs: number): boolean {
  return day <= dayOfMs(nowMs, AHEAD_MINUTES);
}
