import { compareDays, type Day } from '../calendar';
import type { GaugeEvidence } from '../gauge/evidence';
import { isAfterEvidence } from '../gauge/last-good-evidence';

/** A recall of a master, as far as it casts doubt on what was checked or set on it. */
export interface MasterRecall {
  readonly id: string;
  /** The master itself. */
  readonly gaugeId: string;
  readonly foundOnDay: Day;
  readonly evidenceOnDay: Day | null;
  readonly windowFromMs: number | null;
  readonly windowToMs: number;
}

type Check = Pick<GaugeEvidence, 'againstToolId' | 'onDay' | 'atMs'>;

/**
 * Whether a check or a setting was made on a master in the time in which that master is in doubt: after its last good
 * evidence, and not after it was found out. One written down late counts by its own day.
 * Source: common practice after ISO 9001:2015 7.1.5.2: what a fault may have spoilt is looked at, down the chain.
 */
export function restsOnDoubt({ againstToolId, onDay, atMs }: Check, recall: MasterRecall): boolean {
  if (againstToolId !== recall.gaugeId) return false;
  if (atMs > recall.windowToMs && compareDays(onDay, recall.foundOnDay) >= 0) return false;
  const { evidenceOnDay, windowFromMs } = recall;
  if (evidenceOnDay === null || windowFromMs === null) return true;
  return isAfterEvidence({ onDay, atMs }, { onDay: evidenceOnDay, atMs: windowFromMs });
}

/**
 * A gauge’s evidence with what rests on a master in doubt no longer counting. For every window that is opened: a check on a
 * plug that was itself out shows nothing. Domain: evidence in any order, kept in it.
 */
export function discountDoubted<E extends Check & { readonly qualifies: boolean }>(
  evidence: readonly E[],
  recalls: readonly MasterRecall[],
): E[] {
  return evidence.map((one) =>
    one.qualifies && recalls.some((recall) => restsOnDoubt(one, recall)) ? { ...one, qualifies: false } : one,
  );
}
