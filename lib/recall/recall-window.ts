import { compareDays, type Day } from '../calendar';
import type { GaugeEvidence } from '../gauge/evidence';
import { isAfterEvidence, isGoodEvidence, type ShopMoment } from '../gauge/last-good-evidence';
import type { GoodEvidenceKind } from '../shop/recall';

/** As much of a piece of evidence as the window asks for. */
export type WindowEvidence = Pick<
  GaugeEvidence,
  'entryId' | 'kind' | 'onDay' | 'atMs' | 'asFound' | 'asLeft' | 'qualifies'
>;

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
 * The window of a recall: from the last good evidence before the finding, up to the finding. Good evidence is a
 * calibration whose as-found results are in, or one that adjusted the gauge and left it good, or a documented check that
 * counts; never the due date. A certificate without as-found data does not say how the gauge came in, so the window goes
 * past it, back to how the certificate before left it, or to any better evidence on the way. Without any: the first use.
 * Source: common practice after ISO 9001:2015 7.1.5.2; ISO/IEC 17025:2017 7.8.4.1 (results before and after adjustment).
 */
export function recallWindow(evidence: readonly WindowEvidence[], found: Finding): RecallWindow {
  const before = evidence
    .filter((one) => one.entryId !== found.entryId && compareMoments(one, found) < 0)
    .sort(compareMoments);
  const last = lastGood(before);
  return {
    evidence: last === undefined ? 'none' : kindOf(last),
    evidenceEntryId: last?.entryId ?? null,
    evidenceOnDay: last?.onDay ?? null,
    windowFromMs: last?.atMs ?? null,
    windowToMs: found.atMs,
  };
}

/** Walks back; the second certificate on the way that took no as-found data counts by how it left the gauge. */
function lastGood(before: readonly WindowEvidence[]): WindowEvidence | undefined {
  let passedOne = false;
  for (const one of before.toReversed()) {
    if (isGoodEvidence(one)) return one;
    const silent = one.kind === 'calibration' && one.asFound === 'not-taken' && one.asLeft === 'in';
    if (silent && passedOne) return one;
    passedOne ||= silent;
  }
  return undefined;
}

function kindOf(evidence: WindowEvidence): GoodEvidenceKind {
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
  return isAfterEvidence(end, { ...NO_MATTER, onDay, atMs });
}

/** What the comparison of moments does not look at. */
const NO_MATTER = { entryId: '', asFound: 'in', asLeft: 'in', qualifies: true } as const;

function compareMoments(a: ShopMoment, b: ShopMoment): number {
  return compareDays(a.onDay, b.onDay) || a.atMs - b.atMs;
}
