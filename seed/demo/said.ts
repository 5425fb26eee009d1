import type { Db } from '../../db/open';
import { readShopFacts } from '../../db/queries/shop-facts';
import { dayOfMs } from '../../lib/calendar';
import { type Outlook, outlookOver } from '../../lib/outlook/outlook';
import { type ShopFutures, shopFutures } from '../../lib/outlook/shop-futures';
import { shownAtPlan } from '../../lib/outlook/shown-at-plan';
import { shownFor } from '../../lib/outlook/shown-for';
import type { Job } from '../../lib/shop/job';
import type { LineShown } from '../../lib/shop/line-shown';
import type { Shown } from '../../lib/shop/shown';

/** What was drawn last of each database: what has not moved since need not be drawn again. */
const drawn = new WeakMap<Db, ShopFutures>();

/** What the screens would have shown of a tool when it went out at that moment of the story. */
export function saidOfTool(
  db: Db,
  nowMs: number,
  about: { toolId: string; jobLineId: string | null },
): Shown | undefined {
  const { toolId, jobLineId } = about;
  return jobLineId === null ? undefined : shownFor(outlookAt(db, nowMs), { toolId, jobLineId });
}

/** What the plan would have said of the lines of a job when it was entered at that moment. */
export function saidOfJob(db: Db, nowMs: number, job: Pick<Job, 'id' | 'lines'>): LineShown[] {
  return shownAtPlan(outlookAt(db, nowMs), job);
}

function outlookAt(db: Db, nowMs: number): Outlook {
  const facts = readShopFacts(db, { today: dayOfMs(nowMs) });
  const futures = shopFutures(facts, drawn.get(db));
  drawn.set(db, futures);
  return outlookOver(futures.ensemble, { facts, lines: [], sizes: [] });
}
