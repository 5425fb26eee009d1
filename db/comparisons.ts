/**
 * Compares the lots, suppliers and heats of a shop and prints what it found as JSON, in a process of its own: each
 * comparison takes a fit. node --import tsx db/comparisons.ts --json [--shop demo|shop]. Reads only.
 */
import { parseArgs } from 'node:util';
import { compareGroups } from '../lib/outlook/compare-groups';
import { shopEnsemble } from '../lib/outlook/shop-ensemble';
import { shopDay } from './ledger/ledger';
import { openReadOnly } from './open-read-only';
import { readShopFacts } from './queries/shop-facts';
import { listToolLogs } from './queries/tool-logs';
import { dataDir, pathOf, readOpenShop, shopNames } from './shop-files';
import { wallClock } from './wall-clock';

const { values } = parseArgs({ options: { shop: { type: 'string' }, json: { type: 'boolean' } } });
const dir = dataDir(process.env);
const db = openReadOnly(pathOf(dir, shopNames.find((name) => name === values.shop) ?? readOpenShop(dir)));
const facts = readShopFacts(db, { today: shopDay(wallClock()) });
const found = compareGroups({ facts, ensemble: shopEnsemble(facts) }, listToolLogs(db));
db.$client.close();
process.stdout.write(`${JSON.stringify(found)}\n`);
