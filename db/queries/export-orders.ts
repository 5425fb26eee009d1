import { csvText } from '../../lib/import/csv-text';
import { ORDER_COLUMNS, orderCells } from '../../lib/orders/order-text';
import type { Db } from '../open';
import { listClosedOrders, listDrafts, listOpenOrders } from './orders';
import { listConnections, listParts } from './tables';

/** All orders as a CSV file, or only those that are still to be placed: drafts first, then open ones, then closed ones. */
export function exportOrders(db: Db, which: 'all' | 'to-place'): string {
  const connections = listConnections(db);
  const parts = new Map(listParts(db).map((part) => [part.id, part]));
  const orders =
    which === 'all' ? [...listDrafts(db), ...listOpenOrders(db), ...listClosedOrders(db)] : listDrafts(db);
  return csvText(
    ORDER_COLUMNS,
    orders.map((order) => orderCells(order, parts.get(order.partId), connections)),
  );
}
