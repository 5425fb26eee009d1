import { and, asc, desc, eq, inArray, type SQL } from 'drizzle-orm';
import type { EdgeReading, EdgeUse } from '../../lib/ledger/tool-record';
import { toolKey } from '../../lib/shop/tool-id';
import type { EdgeEnd, EndCause, Role, ToolState } from '../../lib/shop/vocabulary';
import type { Db } from '../open';
import { cut, edge, edgeUse, person, tool } from '../schema';

/** A tool as the crib's list shows it. */
export type ToolRow = typeof tool.$inferSelect & { readonly holderName: string | null };

/** An edge with everything it has cut. */
export interface EdgeRow {
  readonly toolId: string;
  readonly edgeNo: number;
  readonly end: EdgeEnd | null;
  readonly cause: EndCause | null;
  readonly endedAtMs: number | null;
  readonly lastUse: EdgeUse | null;
  readonly use: readonly EdgeUse[];
  readonly readings: readonly EdgeReading[];
}

/** Tools, by ID; filtered by ID, role and state where asked. */
export function listTools(
  db: Db,
  filter: { ids?: readonly string[]; roles?: readonly Role[]; states?: readonly ToolState[] } = {},
): ToolRow[] {
  const wanted: SQL[] = [];
  if (filter.ids !== undefined) wanted.push(inArray(tool.id, [...filter.ids]));
  if (filter.roles !== undefined) wanted.push(inArray(tool.role, [...filter.roles]));
  if (filter.states !== undefined) wanted.push(inArray(tool.state, [...filter.states]));
  const rows = db
    .select()
    .from(tool)
    .leftJoin(person, eq(person.id, tool.holderId))
    .where(and(...wanted))
    .orderBy(asc(tool.id))
    .all();
  return rows.map((row) => ({ ...row.tool, holderName: row.person?.name ?? null }));
}

/** One tool by its marked ID as typed or scanned: look-alike characters count as one. */
export function findTool(db: Db, typedId: string): ToolRow | undefined {
  const row = db
    .select()
    .from(tool)
    .leftJoin(person, eq(person.id, tool.holderId))
    .where(eq(tool.lookUpKey, toolKey(typedId)))
    .get();
  return row === undefined ? undefined : { ...row.tool, holderName: row.person?.name ?? null };
}

/** The edges of all tools, or of one, in order, each with what it has cut. */
export function listEdges(db: Db, toolId?: string): EdgeRow[] {
  const ofTool = toolId === undefined ? undefined : eq(edge.toolId, toolId);
  const useOfTool = toolId === undefined ? undefined : eq(edgeUse.toolId, toolId);
  const edges = db.select().from(edge).where(ofTool).orderBy(asc(edge.toolId), asc(edge.edgeNo)).all();
  const uses = new Map<string, EdgeUse[]>();
  for (const { toolId: id, edgeNo, ...use } of db.select().from(edgeUse).where(useOfTool).all()) {
    const key = `${id} ${edgeNo}`;
    const group = uses.get(key);
    if (group === undefined) uses.set(key, [use]);
    else group.push(use);
  }
  return edges.map((row) => ({ ...row, use: uses.get(`${row.toolId} ${row.edgeNo}`) ?? [] }));
}

/** The rows of the cut log of one tool, newest first. */
export function listCuts(db: Db, toolId: string, limit = 200) {
  return db
    .select()
    .from(cut)
    .leftJoin(person, eq(person.id, cut.personId))
    .where(eq(cut.toolId, toolId))
    .orderBy(desc(cut.seq))
    .limit(limit)
    .all()
    .map((row) => ({ ...row.cut, personName: row.person?.name ?? 'Set-up' }));
}
export type CutRow = ReturnType<typeof listCuts>[number];
