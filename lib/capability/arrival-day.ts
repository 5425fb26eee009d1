import { addDays, type Day } from '../calendar/day';
import type { Arrival } from './plan-input';

/** Later than this is as good as never. */
const DAYS_MAX = 36_500;
/** Room for the last digit of a share. */
const SLACK = 1e-9;

const sorted = new WeakMap<object, Float64Array>();

/**
 * The day by which an order is there with at least the stated probability: the n-th smallest of its drawn days, n = ⌈p·K⌉,
 * not before today. For needs that are yes or no on a date. Null when it does not come in that share of draws.
 * Domain: at least one draw, 0 < p ≤ 1. A piece here is usable from that day on.
 */
export function arrivalDayAt(
  arrivalDayDraws: ArrayLike<number>,
  probability: number,
  today: Day,
): Day | null {
  const known = sorted.get(arrivalDayDraws) ?? Float64Array.from(arrivalDayDraws).sort();
  sorted.set(arrivalDayDraws, known);
  const rank = Math.max(1, Math.ceil(probability * known.length - SLACK));
  const inDays = known[rank - 1] ?? Number.POSITIVE_INFINITY;
  return inDays > DAYS_MAX ? null : addDays(today, Math.max(0, Math.ceil(inDays)));
}

/** The day from which an order counts for a yes-or-no need: the drawn one where there is one, else the stated one. */
export function firmArrivalDay(
  { arrivalDayDraws, expectedOnDay }: Pick<Arrival, 'arrivalDayDraws' | 'expectedOnDay'>,
  probability: number,
  today: Day,
): Day | null {
  if (arrivalDayDraws !== undefined) return arrivalDayAt(arrivalDayDraws, probability, today);
  return expectedOnDay < today ? null : expectedOnDay;
}
