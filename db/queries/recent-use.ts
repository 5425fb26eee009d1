import { daysBetween } from '../../lib/calendar/day';
import type { RecentUse } from '../../lib/outlook/shop-facts';
import type { CutOperation } from '../../lib/shop/vocabulary';
import { statement } from '../ledger/statements';
import type { Db } from '../open';

/** How far back the rate of work is looked at: half a year, long enough for a slow size to show. */
const LOOK_BACK_DAYS = 182;
/** A log of a few days says nothing of a rate: it is spread over at least so many. */
const LEAST_DAYS = 28;

const FIRST_DAY = `SELECT date(min(cut_at_ms) / 1000, 'unixepoch') AS day FROM cut WHERE reversed = 0`;
const RECENT = `SELECT connection_id AS connectionId, material_id AS materialId, operation, sum(ends) AS ends
  FROM cut WHERE reversed = 0 AND cut_at_ms > ? GROUP BY connection_id, material_id, operation
  ORDER BY connection_id, material_id, operation`;

/** Ends cut over the last half year, by size, material and operation, with the days that they are spread over. */
export function listRecentUse(db: Db, { today }: { today: string }): RecentUse[] {
  const { day } = statement(db.$client, FIRST_DAY).get() as { day: string | null };
  if (day === null) return [];
  const days = Math.max(LEAST_DAYS, Math.min(LOOK_BACK_DAYS, daysBetween(day, today) + 1));
  const sinceMs = Date.parse(`${today}T00:00:00Z`) - (days - 1) * 86_400_000;
  const rows = statement(db.$client, RECENT).all(sinceMs) as {
    connectionId: string;
    materialId: string;
    operation: CutOperation;
    ends: number;
  }[];
  return rows.map((row) => ({ ...row, days }));
}
