import type { GaugeEvidence } from './evidence';

/** As much of a piece of evidence as the question needs. */
type Dated = Pick<GaugeEvidence, 'kind' | 'onDay' | 'calibration'>;

/**
 * Calibration in force: the one that says how a gauge stands, by the day on which it was calibrated and not by the day on
 * which its certificate was filed. Of two on one day the one entered last. A certificate older than it, filed late, is
 * history. Entries from before this rule hold as they did then, by the order of entry. Undefined where there is none.
 * Domain: evidence in the order of entry. Source: formula, the latest day.
 */
export function calibrationInForce<E extends Dated>(evidence: readonly E[]): E | undefined {
  let inForce: E | undefined;
  for (const one of evidence) {
    if (one.kind !== 'calibration') continue;
    const byDay = one.calibration?.takesHold === 'by-day';
    if (inForce === undefined || !byDay || one.onDay >= inForce.onDay) inForce = one;
  }
  return inForce;
}
