import { type Db, openDb } from '@/db/open';
import { seedDemo } from '@/seed/demo';

/** The moment and the day that tests make the demo at. */
export const DEMO_NOW = Date.UTC(2026, 10, 25, 10, 30);
export const DEMO_DAY = '2026-11-25';

/** Demos made so far, by their moment: making one takes seconds, opening a copy none. */
const made = new Map<number, Buffer>();

/** The demo shop in memory, its entries numbered in the order in which they were made. */
export function demoShop(now = DEMO_NOW): Db {
  const bytes = made.get(now) ?? madeAnew(now).$client.serialize();
  made.set(now, bytes);
  return openDb(Buffer.from(bytes));
}

/** The same, made and not copied. */
export function madeAnew(now = DEMO_NOW): Db {
  const db = openDb(':memory:');
  let count = 0;
  seedDemo(db, { now, newId: () => `demo-${String(++count).padStart(6, '0')}` });
  return db;
}

/** The rows of a query. */
export function rowsOf<T>(db: Db, sql: string, ...values: (string | number)[]): T[] {
  return db.$client.prepare(sql).all(...values) as T[];
}
