import {
  closeSync,
  existsSync,
  fsyncSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  writeSync,
} from 'node:fs';
import { join, resolve } from 'node:path';

/** The two databases a data folder may hold: the invented demo shop, and the shop of one's own. */
export const shopNames = ['demo', 'shop'] as const;
export type ShopName = (typeof shopNames)[number];

const choiceFile = 'open-shop';

/** The data folder, absolute: EDGEKEEP_DATA, or `data` in the folder the command runs in. */
export function dataDir(env: Readonly<Record<string, string | undefined>>): string {
  return resolve(/* turbopackIgnore: true */ env.EDGEKEEP_DATA || 'data');
}

/** The SQLite file of a shop. */
export function pathOf(dir: string, shop: ShopName): string {
  return join(dir, `${shop}.sqlite`);
}

/** True when the shop has a database already. */
export function hasShop(dir: string, shop: ShopName): boolean {
  return existsSync(pathOf(dir, shop));
}

/**
 * The shop being served. A new data folder serves the demo. A choice file that names no shop throws: serving the demo
 * instead would look as if the shop's own data were gone.
 */
export function readOpenShop(dir: string): ShopName {
  const path = join(dir, choiceFile);
  if (!existsSync(path)) return 'demo';
  const text = readFileSync(path, 'utf8').trim();
  const shop = shopNames.find((name) => name === text);
  if (!shop)
    throw new UnknownShopError(`The file ${path} must hold the word "demo" or "shop", and holds neither.`);
  return shop;
}

/** Chooses the shop being served. Written beside and renamed, so that a power cut leaves the old choice or the new one. */
export function writeOpenShop(dir: string, shop: ShopName): void {
  const path = join(dir, choiceFile);
  const next = `${path}.${process.pid}`;
  try {
    writeDurably(next, `${shop}\n`);
    renameSync(next, path);
  } catch (error) {
    rmSync(next, { force: true });
    throw error;
  }
  syncFolder(dir);
}

/** Waits until the names in a folder (created, renamed) are on the disk. Windows has no such call and needs none. */
export function syncFolder(dir: string): void {
  if (process.platform === 'win32') return;
  const handle = openSync(dir, 'r');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

/** The choice file holds something that nobody of this program wrote. */
export class UnknownShopError extends Error {
  override name = 'UnknownShopError';
}

function writeDurably(path: string, text: string): void {
  const handle = openSync(path, 'w');
  try {
    writeSync(handle, text);
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
