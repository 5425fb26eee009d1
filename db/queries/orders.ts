import { asc, desc, eq, inArray } from 'drizzle-orm';
import type { Delivery } from '../../lib/lead-time/delivery';
import type { Db } from '../open';
import { part, purchaseOrder } from '../schema';

/** Orders placed and not yet received in full, the next to come first. */
export function listOpenOrders(db: Db) {
  return db
    .select()
    .from(purchaseOrder)
    .where(eq(purchaseOrder.status, 'placed'))
    .orderBy(asc(purchaseOrder.expectedOnDay), asc(purchaseOrder.id))
    .all();
}
export type OrderRow = ReturnType<typeof listOpenOrders>[number];

/** Orders drafted or approved and not yet placed, the oldest first. */
export function listDrafts(db: Db): OrderRow[] {
  return db
    .select()
    .from(purchaseOrder)
    .where(inArray(purchaseOrder.status, ['drafted', 'approved']))
    .orderBy(asc(purchaseOrder.placedOnDay), asc(purchaseOrder.id))
    .all();
}

/** Orders received in full or cancelled, the last first. */
export function listClosedOrders(db: Db): OrderRow[] {
  return db
    .select()
    .from(purchaseOrder)
    .where(inArray(purchaseOrder.status, ['received', 'cancelled']))
    .orderBy(desc(purchaseOrder.placedOnDay), desc(purchaseOrder.id))
    .all();
}

/** One order, whatever its state. */
export function findOrder(db: Db, id: string): OrderRow | undefined {
  return db.select().from(purchaseOrder).where(eq(purchaseOrder.id, id)).get();
}

/** Every order number that is taken. */
export function listOrderIds(db: Db): string[] {
  return db
    .select({ id: purchaseOrder.id })
    .from(purchaseOrder)
    .orderBy(asc(purchaseOrder.id))
    .all()
    .map(({ id }) => id);
}

/** Orders that came in full, with the supplier they were placed with, or the part's where the order names none. */
export function listDeliveries(db: Db): Delivery[] {
  const rows = db
    .select({ order: purchaseOrder, supplier: part.supplier })
    .from(purchaseOrder)
    .innerJoin(part, eq(part.id, purchaseOrder.partId))
    .where(eq(purchaseOrder.status, 'received'))
    .orderBy(asc(purchaseOrder.placedOnDay), asc(purchaseOrder.id))
    .all();
  return rows.flatMap(({ order, supplier }): Delivery[] => {
    const { id: orderId, partId, placedOnDay, promisedOnDay, firstReceivedOnDay, receivedOnDay } = order;
    if (firstReceivedOnDay === null || receivedOnDay === null) return [];
    const days = { placedOnDay, promisedOnDay, firstReceivedOnDay, receivedOnDay };
    return [{ orderId, partId, supplier: order.supplier === '' ? supplier : order.supplier, ...days }];
  });
}
