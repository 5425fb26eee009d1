// Run by main.mjs as `node --import tsx app/_start/prepare.ts [demo|shop]`: migrates the database of the shop to be served,
// on first run makes the demo, and prints the name of the shop. An expected refusal is one sentence and exit code 3.
import { randomUUID } from 'node:crypto';
import { mkdirSync } from 'node:fs';
import { openDb } from '../../db/open';
import {
  dataDir,
  hasShop,
  pathOf,
  readOpenShop,
  type ShopName,
  shopNames,
  writeOpenShop,
} from '../../db/shop-files';
import { createDemo } from './create-demo';
import { databaseRefusal } from './database-refusal';

const dir = dataDir(process.env);

try {
  mkdirSync(dir, { recursive: true });
  const shop = chosenShop(process.argv[2]);
  // The demo is made also when one's own shop is served: the screens lead from one to the other.
  if (!hasShop(dir, 'demo')) createDemo(dir, { now: Date.now(), newId: () => randomUUID() });
  openDb(pathOf(dir, shop)).$client.close();
  writeOpenShop(dir, shop);
  console.log(shop);
} catch (error) {
  const sentence = databaseRefusal(error, dir);
  if (sentence === undefined) throw error;
  console.error(sentence);
  process.exitCode = 3;
}

function chosenShop(asked: string | undefined): ShopName {
  return shopNames.find((name) => name === asked) ?? readOpenShop(dir);
}
