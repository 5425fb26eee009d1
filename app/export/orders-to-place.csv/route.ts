import { today } from '@/app/_server/clock';
import { csvDownload } from '@/app/_server/csv-download';
import { shopDb } from '@/db/client';
import { exportOrders } from '@/db/queries/export-orders';

export const dynamic = 'force-dynamic';

/** CSV out: the orders that are drafted or approved and still to be placed. */
export function GET(): Response {
  return csvDownload(`orders-to-place-${today()}.csv`, exportOrders(shopDb(), 'to-place'));
}
