import type { GaugeEvidence } from '../gauge/evidence';
import { compareMoments, type Evidence, isGoodEvidence, type ShopMoment } from '../gauge/last-good-evidence';
import { discountDoubted, type MasterRecall, restsOnDoubt } from './master-doubt';

type MasterEvidence = Evidence & Pick<GaugeEvidence, 'againstToolId'>;

/** How a gauge stands that was checked or set on a master found out. */
export interface GaugeOnMaster<E extends MasterEvidence = MasterEvidence> {
  /**
   * `in-doubt`: nothing else has shown it good since. `cleared`: something independent found it good afterwards, and so all
   * that it accepted up to then. `not-passed`: it only failed on the master, and may have been good.
   */
  readonly standing: 'in-doubt' | 'cleared' | 'not-passed';
  /** The last check or setting that rests on the master. */
  readonly last: E;
  readonly count: number;
  readonly clearedBy: E | null;
  /** Up to when what it accepted is in doubt: now, or the next thing said of it that did not find it good. */
  readonly until: ShopMoment;
}

/**
 * A gauge and a master that was found out: whether the gauge’s standing still rests on it. Undefined where it was not
 * checked or set on the master in the time in doubt. Domain: the gauge’s evidence in any order; `recalls`, those of all of its
 * masters. Source: see `restsOnDoubt`; found good later, it was good before: `isGoodEvidence`.
 */
export function gaugeOnMaster<E extends MasterEvidence>(
  evidence: readonly E[],
  master: MasterRecall,
  recalls: readonly MasterRecall[],
  now: ShopMoment,
): GaugeOnMaster<E> | undefined {
  const resting = evidence.filter((one) => restsOnDoubt(one, master)).sort(compareMoments);
  const last = resting.at(-1);
  if (last === undefined) return undefined;
  const passed = resting.findLast(({ asLeft }) => asLeft === 'in');
  const about = { last, count: resting.length, clearedBy: null, until: now };
  if (passed === undefined) return { ...about, standing: 'not-passed' };
  const next = discountDoubted(evidence, [master, ...recalls])
    .filter((one) => one.qualifies && compareMoments(one, passed) > 0)
    .sort(compareMoments)[0];
  if (next === undefined) return { ...about, standing: 'in-doubt' };
  if (isGoodEvidence(next) && next.asFound === 'in')
    return { ...about, standing: 'cleared', clearedBy: next };
  return { ...about, standing: 'in-doubt', until: { onDay: next.onDay, atMs: next.atMs } };
}
