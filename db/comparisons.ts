import { compareGroups } from '../lib/outlook/compare-groups';
import { shopEnsemble } from '../lib/outlook/shop-ensemble';
import { openReadOnly } from './open-read-only';
import { readShopFacts } from './queries/shop-facts';
import { listToolLogs } from './queries/tool-logs';
import { dataDir, pathOf, readOpenShop } from './shop-files';

/** Compares lots, suppliers and heats of the open shop, in a process of its own, and prints what it found as JSON. */
const dir = dataDir(process.env);
const db = openReadOnly(pathOf(dir, readOpenShop(dir)));
const today = new Date().toISOString().slice(0, 10);
const facts = readShopFacts(db, { today });
const found = compareGroups({ facts, ensemble: shopEnsemble(facts) }, listToolLogs(db));
process.stdout.write(`${JSON.stringify(found)}\n`);
