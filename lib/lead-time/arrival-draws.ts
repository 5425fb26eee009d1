import { type Day, daysBetween } from '../calendar/day';
import { stratifiedExponentials } from '../numeric/random-stream';
import { studentTCdf, studentTQuantile } from '../numeric/student-t';
import { type LeadTimeBelief, nextDelay } from './lead-time-belief';

/** An order on its way, or one that might be placed. */
export interface ArrivalQuestion {
  /** Names the chance: the same key draws the same luck. */
  readonly key: string;
  /** The day on which the expected day was last said: when it was placed, confirmed or slipped. */
  readonly statedOnDay: Day;
  readonly expectedOnDay: Day;
  readonly today: Day;
  readonly belief: LeadTimeBelief;
  /** Days from the door to the shelf: the receiving check. */
  readonly receivingDays: number;
  readonly drawCount: number;
}

/**
 * The day on which an order can be used, per draw: whole days from today, 0 or more. Lead time = days from the last word of
 * the supplier to the day expected, times exp(delay), delay as the supplier's past orders say (Student's t). Since it has
 * not come before today, only longer leads are drawn: a late order is right-censored at today. Luck is stratified over
 * the draws and named by the order, so a date that slips keeps its luck. Source: formula (inverse transform).
 */
export function arrivalDays(question: ArrivalQuestion): Int32Array {
  const { key, statedOnDay, expectedOnDay, today, belief, receivingDays, drawCount } = question;
  const quoted = Math.max(1, daysBetween(statedOnDay, expectedOnDay));
  const elapsed = daysBetween(statedOnDay, today);
  const { centre, scale, dof } = nextDelay(belief);
  const gone = elapsed > 0 ? studentTCdf((Math.log((elapsed - 0.5) / quoted) - centre) / scale, dof) : 0;
  const quantiles = tQuantiles(dof, gone, drawCount);
  const luck = stratifiedExponentials(`arrival:${key}`, drawCount);
  return Int32Array.from(luck, (exponential) => {
    const t = quantiles[strataIndex(exponential, drawCount)] as number;
    const days = Math.round(quoted * Math.exp(Math.min(centre + scale * t, MOST_LOG_DELAY)));
    return Math.max(0, Math.min(days - elapsed, MOST_DAYS)) + receivingDays;
  });
}

/** An order is never drawn later than this: thirty years is as good as never. */
const MOST_DAYS = 10_950;
const MOST_LOG_DELAY = 20;

/** Which stratum of K an even exponential is from: u = 1 − exp(−e) = (i + ½)/K. */
function strataIndex(exponential: number, count: number): number {
  return Math.round(-Math.expm1(-exponential) * count - 0.5);
}

/** The t figures at the middles of K even strata of what is left above `gone`; the last few asked for are kept. */
const kept = new Map<string, Float64Array>();

function tQuantiles(dof: number, gone: number, count: number): Float64Array {
  const key = `${dof}:${gone}:${count}`;
  const known = kept.get(key);
  if (known !== undefined) return known;
  const made = Float64Array.from({ length: count }, (_, i) =>
    studentTQuantile(Math.min(gone + ((1 - gone) * (i + 0.5)) / count, LAST), dof),
  );
  if (kept.size >= 64) kept.clear();
  kept.set(key, made);
  return made;
}

/** The greatest probability below 1. */
const LAST = 1 - Number.EPSILON;
