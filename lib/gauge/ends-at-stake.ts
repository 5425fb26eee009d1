import { isInWindow, recallWindow } from '../recall/recall-window';
import type { Evidence, ShopMoment } from './last-good-evidence';

/** Ends accepted with a gauge at a moment. */
export interface AcceptedEnds extends ShopMoment {
  readonly ends: number;
}

/**
 * Ends at stake: how many were accepted with a gauge since it was last known good, should it turn out to be off now. The
 * window is the one that a recall would open. Domain: evidence and uses of one gauge, in any order.
 */
export function endsAtStake(
  evidence: readonly Evidence[],
  accepted: readonly AcceptedEnds[],
  now: ShopMoment,
): { readonly ends: number; readonly sinceDay: string | null } {
  const window = recallWindow(evidence, { ...now, entryId: null });
  const ends = accepted.filter((one) => isInWindow(one, window)).reduce((sum, one) => sum + one.ends, 0);
  return { ends, sinceDay: window.evidenceOnDay };
}
