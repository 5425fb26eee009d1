import 'server-only';
import { setTimeout as wait } from 'node:timers/promises';
import { servedShop } from '@/db/client';
import type { Db } from '@/db/open';
import { readShopFacts } from '@/db/queries/shop-facts';
import type { Outlook } from '@/lib/outlook/outlook';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { today } from './clock';
import { outlookInMemory } from './figures/in-memory';
import { figuresKeeper, isCurrent, ofShop, workOut } from './figures/keeper';
import type { KeptView } from './figures/kept-view';

/** What a page shows figures from: the outlook, and the record at the very version that the outlook was worked out from. */
export interface ShopView {
  readonly outlook: Outlook;
  /** For everything that stands beside the figures. What was entered since is not in it; `shopDb()` has that. */
  readonly db: Db;
  /** When the record was read that the figures rest on, where it has moved since; null where they are of this moment. */
  readonly asOfMs: number | null;
}

/** A page waits so long for new figures before it shows the last ones, marked as such. */
export const PATIENCE_MS = 1500;

/**
 * The shop's outlook with the record it rests on. Figures are worked out in a process of their own, at the latest when
 * they are asked for; the first ones after a start are waited for.
 */
export async function shopView(patienceMs = PATIENCE_MS): Promise<ShopView> {
  const until = performance.now() + patienceMs;
  const keeper = figuresKeeper();
  for (;;) {
    const { path, db } = servedShop();
    if (path === undefined) return { outlook: outlookInMemory(), db, asOfMs: null };
    const kept = ofShop(keeper.kept);
    if (kept !== undefined && isCurrent(kept)) return viewOf(kept, null);
    const job = workOut(keeper, path);
    if (kept === undefined) {
      await job;
      continue;
    }
    const leftMs = until - performance.now();
    if (leftMs <= 0) return viewOf(kept, kept.readAtMs);
    await Promise.race([job, wait(leftMs, undefined, { ref: false })]);
  }
}

function viewOf({ outlook, record }: KeptView, asOfMs: number | null): ShopView {
  return { outlook, db: record.db, asOfMs };
}

/** The outlook alone, for whoever shows nothing of the record beside it. */
export async function shopOutlook(): Promise<Outlook> {
  return (await shopView()).outlook;
}

/** Something was entered: new figures are begun at once, so that the next page finds them ready. Never waits. */
export function wakeFigures(): void {
  const { path } = servedShop();
  const keeper = figuresKeeper();
  const kept = ofShop(keeper.kept);
  if (path === undefined || (kept !== undefined && isCurrent(kept))) return;
  const under = keeper.job;
  const done = workOut(keeper, path);
  // What was being worked out already does not hold the new entry: another round follows.
  if (under !== undefined) void done.then(wakeFigures, () => undefined);
}

/** The shop's record as it stands, without a figure about the future: for forms and lists that need no outlook. */
export function shopFacts(): ShopFacts {
  return readShopFacts(servedShop().db, { today: today() });
}
