import { and, asc, desc, eq } from 'drizzle-orm';
import type { KitRecord } from '../../lib/ledger/kit-history';
import type { Db } from '../open';
import { kit, tool } from '../schema';
import { listTools, type ToolRow } from './tools';

/** One item of a kit with where it stands now. */
export interface KitItemRow {
  readonly tool: ToolRow;
  /** Out with this very kit still. */
  readonly out: boolean;
}

/** A kit with its items. */
export interface KitRow extends KitRecord {
  readonly itemsNow: readonly KitItemRow[];
}

/** Kits, the latest first; only those still out unless all are asked for. */
export function listKits(
  db: Db,
  { all = false, limit = 100 }: { all?: boolean; limit?: number } = {},
): KitRow[] {
  const rows = db
    .select()
    .from(kit)
    .where(all ? undefined : eq(kit.status, 'out'))
    .orderBy(desc(kit.issuedAtMs), asc(kit.id))
    .limit(limit)
    .all();
  return withItems(db, rows);
}

/** One kit by its ID. */
export function findKit(db: Db, kitId: string): KitRow | undefined {
  const [found] = withItems(db, db.select().from(kit).where(eq(kit.id, kitId)).all());
  return found;
}

/** The kit that a tool is out in; undefined where it is not out in one. */
export function findKitOfTool(db: Db, toolId: string): KitRow | undefined {
  const row = db
    .select({ kitId: tool.kitId })
    .from(tool)
    .where(and(eq(tool.id, toolId), eq(tool.state, 'issued')))
    .get();
  return row?.kitId ? findKit(db, row.kitId) : undefined;
}

/** Kits with their items as they stand now: the tools of these kits, and no others, are read, all at once. */
function withItems(db: Db, rows: readonly KitRecord[]): KitRow[] {
  const ids = new Set(rows.flatMap(({ items }) => items.map(({ toolId }) => toolId)));
  const tools = new Map(listTools(db, { ids: [...ids] }).map((row) => [row.id, row]));
  return rows.map((row) => ({
    ...row,
    itemsNow: row.items.flatMap(({ toolId }) => {
      const found = tools.get(toolId);
      return found === undefined ? [] : [{ tool: found, out: found.kitId === row.id }];
    }),
  }));
}
