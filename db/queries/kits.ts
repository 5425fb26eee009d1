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
  const tools = new Map(listTools(db).map((row) => [row.id, row]));
  return rows.map((row) => withItems(row, tools));
}

/** One kit by its ID. */
export function findKit(db: Db, kitId: string): KitRow | undefined {
  const row = db.select().from(kit).where(eq(kit.id, kitId)).get();
  if (row === undefined) return undefined;
  return withItems(row, new Map(listTools(db).map((tool) => [tool.id, tool])));
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

function withItems(row: KitRecord, tools: ReadonlyMap<string, ToolRow>): KitRow {
  const itemsNow = row.items.flatMap(({ toolId }) => {
    const found = tools.get(toolId);
    return found === undefined ? [] : [{ tool: found, out: found.kitId === row.id }];
  });
  return { ...row, itemsNow };
}
