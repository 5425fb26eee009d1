import type { GaugeEvidence } from '../../lib/gauge/evidence';
import type { ShopMoment } from '../../lib/gauge/last-good-evidence';
import { type GaugeOnMaster, gaugeOnMaster } from '../../lib/recall/gauge-on-master';
import { discountDoubted, type MasterRecall } from '../../lib/recall/master-doubt';
import { isInWindow, recallWindow } from '../../lib/recall/recall-window';
import type { Role } from '../../lib/shop/vocabulary';
import { statement } from '../ledger/statements';
import type { Db } from '../open';
import { listAcceptedWith } from './gauge-use';
import { listEvidence } from './gauges';
import { listRecallsOf } from './recalls';
import { findTool } from './tools';

type Resting = Pick<GaugeEvidence, 'againstToolId' | 'onDay' | 'atMs' | 'qualifies'>;

/** The recalls of the masters that a gauge was checked or set on. */
export function recallsOfMasters(
  db: Db,
  evidence: readonly Pick<Resting, 'againstToolId'>[],
): MasterRecall[] {
  const masters = new Set(evidence.flatMap(({ againstToolId }) => againstToolId ?? []));
  return [...masters].flatMap((masterId) => listRecallsOf(db, masterId));
}

/** A gauge’s evidence as it counts now: what rests on a master that was found out counts no more. */
export function countedEvidence<E extends Resting>(db: Db, evidence: readonly E[]): E[] {
  return discountDoubted(evidence, recallsOfMasters(db, evidence));
}

/** A gauge that was checked or set on a master while that was in doubt. */
export interface GaugeOfMaster extends GaugeOnMaster<GaugeEvidence> {
  readonly gaugeId: string;
  readonly role: Role;
  /** Ends accepted with it since anything else showed it good; 0 where it is cleared. */
  readonly endsInDoubt: number;
  /** Its own recall for this, where one was opened. */
  readonly recallId: string | null;
}

const ON_MASTER = 'SELECT DISTINCT tool_id FROM gauge_evidence WHERE against_tool_id = ? ORDER BY tool_id';

/** The gauges checked or set on the gauge of a recall since its last good evidence, as they stand at a moment. */
export function gaugesOfMaster(db: Db, recall: MasterRecall, now: ShopMoment): GaugeOfMaster[] {
  const ids = statement(db.$client, ON_MASTER).pluck().all(recall.gaugeId) as string[];
  return ids.flatMap((gaugeId) => {
    const evidence = listEvidence(db, gaugeId);
    const recalls = recallsOfMasters(db, evidence);
    const stands = gaugeOnMaster(evidence, recall, recalls, now);
    const role = findTool(db, gaugeId)?.role;
    if (stands === undefined || role === undefined) return [];
    const window = recallWindow(discountDoubted(evidence, recalls), { ...stands.until, entryId: null });
    const accepted = listAcceptedWith(db, gaugeId).filter((one) => isInWindow(one, window));
    const ends = stands.standing === 'in-doubt' ? accepted.reduce((sum, one) => sum + one.ends, 0) : 0;
    const own = listRecallsOf(db, gaugeId).find(({ masterRecallId }) => masterRecallId === recall.id);
    return [{ ...stands, gaugeId, role, endsInDoubt: ends, recallId: own?.id ?? null }];
  });
}

/** Those of them that nobody has looked at: in doubt, and without a recall of their own. */
export function gaugesUnreviewed(gauges: readonly GaugeOfMaster[]): GaugeOfMaster[] {
  return gauges.filter(({ standing, recallId }) => standing === 'in-doubt' && recallId === null);
}
