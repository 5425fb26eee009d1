import { today } from '@/app/_server/clock';
import { csvDownload } from '@/app/_server/csv-download';
import { shopDb } from '@/db/client';
import { exportOrders } from '@/db/queries/export-orders';

export const dynamic = 'force-dynamic';

/** CSV out: every order, drafts and closed ones among them. */
export function GET(): Response {
  return csvDownload(`orders-${today()}.csv`, exportOrders(shopDb(), 'all'));
}
