import { compareDays } from '../calendar/day';
import type { GaugeEvidence } from './evidence';

/** As much of a piece of evidence as the window asks for. */
export type Evidence = Pick<GaugeEvidence, 'entryId' | 'onDay' | 'atMs' | 'asFound' | 'asLeft' | 'qualifies'>;

/** A moment in the shop: the calendar day, and the server's clock. */
export interface ShopMoment {
  readonly onDay: string;
  readonly atMs: number;
}

/**
 * Whether a piece of evidence says that the gauge was good at that moment, for all that was accepted with it before:
 * found within its limits, left so, and documented so that it counts. One found out and adjusted is good from then on,
 * and what came before it is the matter of a review of its own. A certificate that does not say how the gauge was found
 * is no evidence: the window goes past it, back to the certificate before.
 * Source: common practice after ISO 9001:2015 7.1.5.2 and ISO/IEC 17025:2017 7.8.4.1 (results before and after adjustment).
 * @example isGoodEvidence({ entryId: 'e', onDay: '2026-03-02', atMs: 0, asFound: 'not-taken', asLeft: 'in', qualifies: true }) // => false
 */
export function isGoodEvidence(evidence: Evidence): boolean {
  return evidence.qualifies && evidence.asLeft === 'in' && evidence.asFound !== 'not-taken';
}

/**
 * Last good evidence: where the review of what a gauge has accepted begins when it is found out at `before`. The latest
 * good evidence by day, then by the clock, that came earlier; undefined when there is none, and then everything that the
 * gauge ever accepted is to be looked at. The day it fell due has no part in it.
 * Domain: evidence in any order. Source: see `isGoodEvidence`.
 */
export function lastGoodEvidence<E extends Evidence>(
  evidence: readonly E[],
  before?: ShopMoment,
): E | undefined {
  let last: E | undefined;
  for (const one of evidence) {
    if (!isGoodEvidence(one)) continue;
    if (before !== undefined && compareMoments(one, before) >= 0) continue;
    if (last === undefined || compareMoments(one, last) >= 0) last = one;
  }
  return last;
}

/**
 * Whether an end that was accepted at a moment lies after a piece of evidence, and so inside the window it opens. On the
 * day itself the clock decides; evidence entered on a later day than its own has no hour, so all of its day is inside.
 */
export function isAfterEvidence(end: ShopMoment, evidence: Evidence | undefined): boolean {
  if (evidence === undefined) return true;
  const day = compareDays(end.onDay, evidence.onDay);
  if (day !== 0) return day > 0;
  return end.atMs > evidence.atMs || enteredLater(evidence);
}

const DAY_MS = 86_400_000;

/** Entered when its day was over everywhere on Earth: its hour says nothing. */
function enteredLater({ onDay, atMs }: Evidence): boolean {
  return atMs >= Date.parse(`${onDay}T00:00:00Z`) + 1.5 * DAY_MS;
}

function compareMoments(a: ShopMoment, b: ShopMoment): number {
  return compareDays(a.onDay, b.onDay) || a.atMs - b.atMs;
}
