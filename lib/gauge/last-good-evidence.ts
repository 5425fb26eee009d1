import { compareDays } from '../calendar/day';
import type { GaugeEvidence } from './evidence';

/** As much of a piece of evidence as the window asks for. */
export type Evidence = Pick<
  GaugeEvidence,
  'entryId' | 'kind' | 'onDay' | 'atMs' | 'asFound' | 'asLeft' | 'qualifies'
>;

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
 * @example isGoodEvidence({ entryId: 'e', kind: 'calibration', onDay: '2026-03-02', atMs: 0, asFound: 'not-taken', asLeft: 'in', qualifies: true }) // => false
 */
export function isGoodEvidence(evidence: Evidence): boolean {
  return evidence.qualifies && evidence.asLeft === 'in' && evidence.asFound !== 'not-taken';
}

/** What showed that a gauge is out: a moment, and its entry where there is one, which is no evidence for itself. */
export interface FoundOut extends ShopMoment {
  readonly entryId?: string | null;
}

/**
 * Last good evidence: where the review of what a gauge has accepted begins when it is found out at `before`. The latest
 * by day, then by the clock, that came earlier and was good; the day it fell due has no part in it. A certificate that does
 * not say how the gauge was found says only how it was left: the window goes past it, back to any good evidence or, where
 * the one before it is silent too, to how that one left the gauge. Undefined when there is none: then everything that the
 * gauge ever accepted is to be looked at. Domain: evidence in any order. Source: see `isGoodEvidence`.
 */
export function lastGoodEvidence<E extends Evidence>(
  evidence: readonly E[],
  before?: FoundOut,
): E | undefined {
  const earlier = evidence
    .filter(
      (one) => before === undefined || (one.entryId !== before.entryId && compareMoments(one, before) < 0),
    )
    .sort(compareMoments);
  let passedOne = false;
  for (const one of earlier.toReversed()) {
    if (isGoodEvidence(one)) return one;
    const silent = isSilent(one);
    if (silent && passedOne) return one;
    passedOne ||= silent;
  }
  return undefined;
}

/** A certificate that left it good, and does not say how it came in. */
function isSilent({ kind, asFound, asLeft, qualifies }: Evidence): boolean {
  return kind === 'calibration' && qualifies && asFound === 'not-taken' && asLeft === 'in';
}

/**
 * Whether an end that was accepted at a moment lies after a piece of evidence, and so inside the window it opens. On the
 * day itself the clock decides; evidence entered on a later day than its own has no hour, so all of its day is inside.
 */
export function isAfterEvidence(end: ShopMoment, evidence: ShopMoment | undefined): boolean {
  if (evidence === undefined) return true;
  const day = compareDays(end.onDay, evidence.onDay);
  if (day !== 0) return day > 0;
  return end.atMs > evidence.atMs || enteredLater(evidence);
}

const DAY_MS = 86_400_000;

/** Entered when its day was over everywhere on Earth: its hour says nothing. */
function enteredLater({ onDay, atMs }: ShopMoment): boolean {
  return atMs >= Date.parse(`${onDay}T00:00:00Z`) + 1.5 * DAY_MS;
}

/** Earlier first: by day, then by the clock. */
export function compareMoments(a: ShopMoment, b: ShopMoment): number {
  return compareDays(a.onDay, b.onDay) || a.atMs - b.atMs;
}
