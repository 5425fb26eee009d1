import { invariant } from '../invariant';

/** When a piece is needed and how long an order takes, per draw, in days; need Infinity where it is not needed. */
export interface OrderTiming {
  readonly needDays: Float64Array;
  /** From placing to the shelf. */
  readonly leadDays: ArrayLike<number>;
}

/**
 * Last day on which an order still comes in time in a share `target` of the draws, days from today: the largest D with
 * D + lead <= need in that share, a draw that needs nothing counting as in time. Negative: that day has passed. Infinity:
 * nothing need be ordered to be so sure. Domain: 0 < target < 1.
 */
export function orderByInDays({ needDays, leadDays }: OrderTiming, target: number): number {
  invariant(target > 0 && target < 1, 'orderByInDays requires a target between 0 and 1');
  const slack = needDays.map((day, k) => day - (leadDays[k] ?? 0)).sort();
  const late = slack.length - Math.ceil(target * slack.length - 1e-9);
  return Math.floor(slack[late] ?? Number.POSITIVE_INFINITY);
}

/** Share of the draws in which an order placed so many days from today comes in time. */
export function inTime({ needDays, leadDays }: OrderTiming, orderInDays: number): number {
  let sum = 0;
  for (let k = 0; k < needDays.length; k++)
    if (orderInDays + (leadDays[k] ?? 0) <= (needDays[k] as number)) sum++;
  return sum / needDays.length;
}

/**
 * Days that the work stands still on average when the order is placed so many days from today, or, without an answer to
 * that ('when-out'), on the day on which the piece is needed. Counted until it comes, at most `mostDays` a draw.
 */
export function stoppedDays(
  { needDays, leadDays }: OrderTiming,
  orderInDays: number | 'when-out',
  mostDays = 365,
): number {
  let sum = 0;
  for (let k = 0; k < needDays.length; k++) {
    const need = needDays[k] as number;
    if (!Number.isFinite(need)) continue;
    const there = (orderInDays === 'when-out' ? need : orderInDays) + (leadDays[k] ?? 0);
    sum += Math.min(mostDays, Math.max(0, there - need));
  }
  return sum / needDays.length;
}

/** Share of the draws that need it at all, and in the middle of those the day, from today; null where none does. */
export function needOf(needDays: Float64Array): {
  readonly probability: number;
  readonly medianInDays: number | null;
} {
  const needed = needDays.filter(Number.isFinite).sort();
  const middle = needed[Math.floor((needed.length - 1) / 2)];
  return {
    probability: needed.length / needDays.length,
    medianInDays: middle === undefined ? null : Math.floor(middle),
  };
}
