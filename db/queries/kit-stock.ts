import type { KitStock } from '../../lib/kit/propose-kit';
import { statement } from '../ledger/statements';
import type { Db } from '../open';
import { listParts } from './tables';
import { findTool, listTools, type ToolRow } from './tools';

/** Every tool that is neither scrapped nor lost, with its part and whether its edge has ended: what kits are made of. */
export function listKitStock(db: Db): KitStock[] {
  const parts = new Map(listParts(db).map((part) => [part.id, part]));
  const ended = endedEdges(db);
  return listTools(db).flatMap((tool) => {
    const part = parts.get(tool.partId);
    if (part === undefined || tool.state === 'scrapped' || tool.state === 'lost') return [];
    return [{ tool: { ...tool, edgeEnded: ended.has(tool.id) }, part }];
  });
}

/** One tool by its marked ID as a kit sees it, whatever became of it. */
export function findKitStock(db: Db, typedId: string): KitStock | undefined {
  const tool: ToolRow | undefined = findTool(db, typedId);
  const part = tool && listParts(db).find(({ id }) => id === tool.partId);
  if (tool === undefined || part === undefined) return undefined;
  return { tool: { ...tool, edgeEnded: endedEdges(db).has(tool.id) }, part };
}

/** Tools whose last edge was taken out of service. */
function endedEdges(db: Db): Set<string> {
  const sql = `SELECT e.tool_id FROM edge e WHERE e.end IS NOT NULL
      AND e.edge_no = (SELECT MAX(edge_no) FROM edge x WHERE x.tool_id = e.tool_id)`;
  return new Set(statement(db.$client, sql).pluck().all() as string[]);
}
