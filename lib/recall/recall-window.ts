import type { Day } from '../calendar';
import {
  type Evidence,
  isAfterEvidence,
  lastGoodEvidence,
  type ShopMoment,
} from '../gauge/last-good-evidence';
import type { GoodEvidenceKind } from '../shop/recall';

/** What showed that the gauge is out: a moment, and its entry where there is one. */
export interface Finding extends ShopMoment {
  readonly entryId: string | null;
}

/** The span in which a gauge may have accepted what it should have refused, and what it rests on. */
export interface RecallWindow {
  readonly evidence: GoodEvidenceKind;
  readonly evidenceEntryId: string | null;
  readonly evidenceOnDay: Day | null;
  /** The moment at which the evidence was entered; null where there is none, and the window opens at the first use. */
  readonly windowFromMs: number | null;
  readonly windowToMs: number;
}

/**
 * The window of a recall: from the last good evidence before the finding (`lastGoodEvidence`), up to the finding; from the
 * first use where there is none. Never from the due date. Source: see `lastGoodEvidence`.
 */
export function recallWindow(evidence: readonly Evidence[], found: Finding): RecallWindow {
  const last = lastGoodEvidence(evidence, found);
  return {
    evidence: last === undefined ? 'none' : kindOf(last),
    evidenceEntryId: last?.entryId ?? null,
    evidenceOnDay: last?.onDay ?? null,
    windowFromMs: last?.atMs ?? null,
    windowToMs: found.atMs,
  };
}

function kindOf(evidence: Evidence): GoodEvidenceKind {
  if (evidence.kind === 'interim') return 'interim';
  return evidence.asFound === 'in' ? 'as-found' : 'as-left';
}

/**
 * Whether an end accepted at a moment lies in the window: after the evidence, and not after the finding. On the day of
 * the evidence the clock decides; evidence entered on a later day than its own has no hour, so its whole day is inside.
 */
export function isInWindow(
  end: ShopMoment,
  window: Pick<RecallWindow, 'evidenceOnDay' | 'windowFromMs' | 'windowToMs'>,
): boolean {
  if (end.atMs > window.windowToMs) return false;
  const { evidenceOnDay: onDay, windowFromMs: atMs } = window;
  if (onDay === null || atMs === null) return true;
  return isAfterEvidence(end, { onDay, atMs });
}
