import { type Day, daysBetween } from '../calendar/day';

/** An order that came in full: when it was placed, for when it was promised then, when the last of it came. */
export interface Delivery {
  readonly orderId: string;
  readonly partId: string;
  readonly supplier: string;
  readonly placedOnDay: Day;
  /** The first promise: a later slip does not change it. */
  readonly promisedOnDay: Day;
  readonly firstReceivedOnDay: Day;
  readonly receivedOnDay: Day;
}

/** Lead times are compared from one day up: what is promised for the same day has no ratio. */
const LEAST_DAYS = 1;

/** Days that the supplier quoted, at least 1. */
export function quotedDays({
  placedOnDay,
  promisedOnDay,
}: Pick<Delivery, 'placedOnDay' | 'promisedOnDay'>): number {
  return Math.max(LEAST_DAYS, daysBetween(placedOnDay, promisedOnDay));
}

/** Days that it took until all of it was there, at least 1. */
export function achievedDays({
  placedOnDay,
  receivedOnDay,
}: Pick<Delivery, 'placedOnDay' | 'receivedOnDay'>): number {
  return Math.max(LEAST_DAYS, daysBetween(placedOnDay, receivedOnDay));
}

/**
 * How an order came against its promise: ln(achieved days ÷ quoted days). 0: as promised; ln 2: it took twice as long.
 * Dividing by the quote lets a supplier's blades (a week) speak for its dies (a month). Source: formula.
 */
export function logDelay(delivery: Delivery): number {
  return Math.log(achievedDays(delivery) / quotedDays(delivery));
}
