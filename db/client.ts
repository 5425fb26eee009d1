import 'server-only';
import { mkdirSync } from 'node:fs';
import { markFile, type OpenFile, requireInPlace } from './file-mark';
import { type Db, openDb } from './open';
import { dataDir, pathOf, readOpenShop, type ShopName, writeOpenShop } from './shop-files';

interface Opened {
  readonly name: ShopName;
  readonly db: Db;
  /** The file that was opened; absent for a database in memory. */
  readonly file?: OpenFile;
}

/** One connection for the whole process: the app's bundles each hold a copy of this module, so it lives on globalThis. */
const KEY = Symbol.for('edgekeep.opened-shop');
const holder = globalThis as { [KEY]?: Opened };

/** The database of the shop being served, opened at first use. */
export function shopDb(): Db {
  return servedShop().db;
}

/** The same with the name of the shop and, where the database is a file, its path. */
export function servedShop(): { name: ShopName; db: Db; path: string | undefined } {
  const { name, db, file } = openedShop();
  if (file !== undefined) requireInPlace(file);
  return { name, db, path: file?.path };
}

/** Which shop is being served: the demo, or one's own. */
export function shopName(): ShopName {
  return openedShop().name;
}

/** Serves the other shop from now on. Its database is opened (and made, if it is new) before the old one is left. */
export function switchShop(name: ShopName): void {
  const before = holder[KEY];
  if (before?.name === name) return;
  const opened = openShop(name);
  writeOpenShop(dataDir(process.env), name);
  holder[KEY] = opened;
  before?.db.$client.close();
}

function openedShop(): Opened {
  const opened = holder[KEY];
  if (opened !== undefined) return opened;
  const fresh = openShop(readOpenShop(dataDir(process.env)));
  holder[KEY] = fresh;
  return fresh;
}

function openShop(name: ShopName): Opened {
  const dir = dataDir(process.env);
  mkdirSync(dir, { recursive: true });
  const path = pathOf(dir, name);
  const db = openDb(path);
  return { name, db, file: markFile(path) };
}
