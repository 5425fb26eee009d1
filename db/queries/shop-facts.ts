import type { ShopFacts } from '../../lib/outlook/shop-facts';
import type { Db } from '../open';
import { listOpenLines } from './jobs';
import { listOpenOrders } from './orders';
import { findCosts, findShop } from './shop';
import { listBeliefs, listConnections, listLifeGuesses, listMaterials, listParts } from './tables';
import { listEdges, listTools } from './tools';

/** Everything that the outlook is computed from, read at one moment. */
export function readShopFacts(db: Db, { today }: { today: string }): ShopFacts {
  return db.$client.transaction(() => ({
    today,
    shop: findShop(db),
    costs: findCosts(db),
    connections: listConnections(db),
    materials: listMaterials(db),
    parts: listParts(db),
    guesses: listLifeGuesses(db),
    beliefs: listBeliefs(db),
    tools: listTools(db),
    edges: listEdges(db),
    lines: listOpenLines(db),
    orders: listOpenOrders(db),
  }))();
}
