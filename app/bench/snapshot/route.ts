import { nowMs } from '@/app/_server/clock';
import { shopView } from '@/app/_server/outlook';
import { shopName } from '@/db/client';
import { listKitStock } from '@/db/queries/kit-stock';
import { type BenchSnapshot, benchLines } from '@/lib/bench/bench-snapshot';

export const dynamic = 'force-dynamic';

/** The lines that benches work at, with what is out for them and how long it lasts: what a bench keeps for the dead spot. */
export async function GET(): Promise<Response> {
  const askedAtMs = nowMs();
  const { outlook, db, asOfMs } = await shopView();
  const snapshot: BenchSnapshot = {
    shop: shopName(),
    asOfMs: asOfMs ?? askedAtMs,
    lines: benchLines(outlook, listKitStock(db)),
  };
  return Response.json({ ...snapshot, nowMs: nowMs() }, { headers: { 'cache-control': 'no-store' } });
}
