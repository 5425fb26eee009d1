import { dayText } from '@/app/_shared/format';
import type { Db } from '@/db/open';
import { gaugesOfMaster } from '@/db/queries/master-recalls';
import { findRecall } from '@/db/queries/recalls';
import { findTool } from '@/db/queries/tools';
import type { ShopMoment } from '@/lib/gauge/last-good-evidence';
import { faultFromMaster } from '@/lib/recall/fault-from-master';
import type { FaultDirection } from '@/lib/shop/recall';

/** What casts doubt on a gauge that was not found out itself: its master was. */
export interface Doubt {
  readonly masterRecallId: string;
  readonly found: string;
  readonly direction: FaultDirection;
  readonly until: ShopMoment;
}

/** The doubt that a master’s recall casts on a gauge; undefined where it casts none, or a recall is open for it already. */
export function doubtOf(
  db: Db,
  { gaugeId, masterRecallId }: { readonly gaugeId: string; readonly masterRecallId: string },
  now: ShopMoment,
): Doubt | undefined {
  const recall = findRecall(db, masterRecallId);
  const gauge = findTool(db, gaugeId);
  if (recall === undefined || gauge === undefined) return undefined;
  const stands = gaugesOfMaster(db, recall, now).find((one) => one.gaugeId === gauge.id);
  if (stands?.standing !== 'in-doubt' || stands.recallId !== null) return undefined;
  const master = findTool(db, recall.gaugeId);
  const what = stands.last.kind === 'calibration' ? 'Set' : 'Checked';
  return {
    masterRecallId,
    found: `${what} on ${recall.gaugeId} on ${dayText(stands.last.onDay)}, which was found out since.`,
    direction: master === undefined ? 'unknown' : faultFromMaster(master.role, recall.direction),
    until: stands.until,
  };
}
