import type { ShopFacts } from '../../lib/outlook/shop-facts';
import type { Db } from '../open';
import { acceptedByLine } from './acceptance';
import { listFluidLots, readFluidLog } from './fluids';
import { listGaugesDueByEnds } from './gauges';
import { listOpenLines } from './jobs';
import { listDeliveries, listDrafts, listOpenOrders } from './orders';
import { listPiecesOwed, listPiecesOwedOn } from './pieces-owed';
import { listRecentUse } from './recent-use';
import { findCosts, findReadingSettings, findShop } from './shop';
import { listBeliefs, listConnections, listLifeGuesses, listMaterials, listParts } from './tables';
import { listEdges, listTools } from './tools';

/** Everything that the outlook is computed from, read at one moment. */
export function readShopFacts(db: Db, { today }: { today: string }): ShopFacts {
  return db.$client.transaction(() => ({
    today,
    shop: findShop(db),
    costs: findCosts(db),
    readingSettings: findReadingSettings(db),
    fluidLots: listFluidLots(db),
    fluidLog: readFluidLog(db),
    connections: listConnections(db),
    materials: listMaterials(db),
    parts: listParts(db),
    guesses: listLifeGuesses(db),
    beliefs: listBeliefs(db),
    tools: listTools(db),
    gaugeUse: listGaugesDueByEnds(db),
    edges: listEdges(db),
    lines: withAccepted(db),
    orders: listOpenOrders(db),
    drafts: listDrafts(db),
    deliveries: listDeliveries(db),
    recentUse: listRecentUse(db, { today }),
  }))();
}

/** The open lines, with the ends of each that were accepted and can be released, and the broken tools whose pieces it waits for. */
function withAccepted(db: Db) {
  const standings = acceptedByLine(db);
  const isOwed = listPiecesOwed(db).length > 0;
  return listOpenLines(db).map((line) => {
    const { acceptedEnds = 0, releasableEnds = 0 } = standings.get(line.id) ?? {};
    return { ...line, acceptedEnds, releasableEnds, piecesOwed: isOwed ? listPiecesOwedOn(db, line.id) : [] };
  });
}
