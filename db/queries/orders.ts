import { asc, sql } from 'drizzle-orm';
import type { Db } from '../open';
import { purchaseOrder } from '../schema';

/** Orders not yet received in full, the next to come first. */
export function listOpenOrders(db: Db) {
  return db
    .select()
    .from(purchaseOrder)
    .where(sql`${purchaseOrder.receivedQuantity} < ${purchaseOrder.quantity}`)
    .orderBy(asc(purchaseOrder.expectedOnDay), asc(purchaseOrder.id))
    .all();
}
export type OrderRow = ReturnType<typeof listOpenOrders>[number];
