/**
 * Replays a shop's own log and prints how often it would have been right: npm run backtest -- [--data DIR] [--shop demo|shop]
 * [--json]. Without --shop the shop being served. Reads only.
 */
import { parseArgs } from 'node:util';
import { shopBacktest } from '../lib/outlook/shop-backtest';
import { scoreText } from '../lib/score/score-text';
import { shopDay } from './ledger/ledger';
import { openReadOnly } from './open-read-only';
import { listLineEnds } from './queries/jobs';
import { readShopFacts } from './queries/shop-facts';
import { listToolLogs } from './queries/tool-logs';
import { dataDir, hasShop, pathOf, readOpenShop, shopNames } from './shop-files';
import { wallClock } from './wall-clock';

const { values } = parseArgs({
  options: { data: { type: 'string' }, shop: { type: 'string' }, json: { type: 'boolean', default: false } },
});
const dir = dataDir(values.data === undefined ? process.env : { EDGEKEEP_DATA: values.data });
const shop = shopNames.find((name) => name === values.shop) ?? readOpenShop(dir);
if (values.shop !== undefined && shop !== values.shop)
  refuse(`There is no shop "${values.shop}"; say demo or shop.`);
else if (!hasShop(dir, shop)) refuse(`There is no shop "${shop}" in ${dir}.`);
else print();

function print(): void {
  const db = openReadOnly(pathOf(dir, shop));
  const facts = readShopFacts(db, { today: shopDay(wallClock()) });
  const found = shopBacktest({ logs: listToolLogs(db), lineEnds: listLineEnds(db), facts });
  db.$client.close();
  const lines = [`${found.rows} rows of the log asked again.`, ...scoreText(found.card, found.coverage)];
  process.stdout.write(`${values.json ? JSON.stringify(found) : lines.join('\n')}\n`);
}

function refuse(sentence: string): void {
  process.stderr.write(`${sentence}\n`);
  process.exitCode = 2;
}
