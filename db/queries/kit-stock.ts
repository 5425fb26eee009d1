import { bottleOfTool } from '../../lib/fluid/bottle-of-tool';
import type { Bottle } from '../../lib/fluid/pick-first';
import type { KitStock } from '../../lib/kit/propose-kit';
import { fluidLotId } from '../../lib/shop/fluid-lot';
import { statement } from '../ledger/statements';
import type { Db } from '../open';
import { listFluidLots } from './fluids';
import { listGaugesDueByEnds } from './gauges';
import { listParts } from './tables';
import { findTool, listTools, type ToolRow } from './tools';

/** Every tool that is neither scrapped nor lost, with its part and what else kits are judged by. */
export function listKitStock(db: Db): KitStock[] {
  return listTools(db)
    .filter(({ state }) => state !== 'scrapped' && state !== 'lost')
    .flatMap(stockReader(db));
}

/** Tools by their marked IDs as a kit sees them, whatever became of them; undefined where no tool has the ID. */
export function findKitStock(db: Db, typedIds: readonly string[]): (KitStock | undefined)[] {
  const stockOf = stockReader(db);
  return typedIds.map((typed) => {
    const tool = findTool(db, typed);
    return tool && stockOf(tool)[0];
  });
}

/** The shop's bottles as they are judged. */
export function listBottles(db: Db): Bottle[] {
  return listTools(db, { roles: ['fluid'] })
    .flatMap(stockReader(db))
    .map(({ tool, part }) => bottleOfTool(tool, part));
}

/** Reads once what the stock of a kit is put together from; none for a tool whose part is not in the table. */
function stockReader(db: Db): (tool: ToolRow) => KitStock[] {
  const parts = new Map(listParts(db).map((part) => [part.id, part]));
  const ended = endedEdges(db);
  const lots = new Map(listFluidLots(db).map((lot) => [fluidLotId(lot), lot.chlorinated]));
  const usedUp = new Set(
    listGaugesDueByEnds(db).flatMap(({ toolId, intervalEnds, endsSince }) =>
      endsSince >= intervalEnds ? [toolId] : [],
    ),
  );
  return (tool) => {
    const part = parts.get(tool.partId);
    if (part === undefined) return [];
    const lotChlorinated = lots.get(fluidLotId(tool)) ?? null;
    const over = { edgeEnded: ended.has(tool.id), endsUsedUp: usedUp.has(tool.id), lotChlorinated };
    return [{ tool: { ...tool, ...over }, part }];
  };
}

/** Tools whose last edge was taken out of service. */
function endedEdges(db: Db): Set<string> {
  const sql = `SELECT e.tool_id FROM edge e WHERE e.end IS NOT NULL
      AND e.edge_no = (SELECT MAX(edge_no) FROM edge x WHERE x.tool_id = e.tool_id)`;
  return new Set(statement(db.$client, sql).pluck().all() as string[]);
}
