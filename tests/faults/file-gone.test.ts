import { existsSync, mkdtempSync, renameSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { act } from '@/app/_server/act';
import { figuresKeeper } from '@/app/_server/figures/keeper';
import { shopOutlook } from '@/app/_server/outlook';
import { addSizes } from '@/db/commands/set-up-shop';
import { ShopFileGoneError } from '@/db/file-mark';
import { openDb } from '@/db/open';
import { writeOpenShop } from '@/db/shop-files';
import { AddSizesInput } from '@/lib/shop/set-up-input';
import { dump, entered } from '../support/db';

vi.mock('next/headers', () => ({ cookies: async () => ({ get: () => undefined }) }));

const holder = globalThis as { [key: symbol]: { db: ReturnType<typeof openDb> } | undefined };
const SERVED = Symbol.for('edgekeep.opened-shop');
let dir: string;
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'edgekeep-gone-'));
  vi.stubEnv('EDGEKEEP_DATA', dir);
  writeOpenShop(dir, 'shop');
});
afterEach(async () => {
  await figuresKeeper().end();
  holder[SERVED]?.db.$client.close();
  delete holder[SERVED];
  vi.unstubAllEnvs();
  rmSync(dir, { recursive: true, force: true });
});

function served() {
  const opened = holder[SERVED];
  if (opened === undefined) throw new Error('no shop is open');
  return opened.db;
}

const door = { action: 'set-up-shop', schema: AddSizesInput, command: addSizes } as const;
const enter = () => act(door, { ...entered(), connectionIds: ['3-8-medium'] }, new FormData());
const path = () => join(dir, 'shop.sqlite');
const GONE = /^Nothing was entered: shop\.sqlite in the data folder was moved, removed or replaced .*\.$/;

// source: hand. SQLite itself would go on and acknowledge entries that no start will ever see again.
it('nothing is acknowledged once the open file was moved away, and all is well when it is put back', async () => {
  expect((await enter()).ok).toBe(true);
  const before = dump(served());
  renameSync(path(), `${path()}.away`);
  expect(await enter()).toMatchObject({ ok: false, state: { sentence: expect.stringMatching(GONE) } });
  await expect(shopOutlook()).rejects.toThrow(ShopFileGoneError);
  expect(existsSync(path())).toBe(false);
  renameSync(`${path()}.away`, path());
  expect(dump(served())).toEqual(before);
  expect((await enter()).ok).toBe(true);
});

it('the same when another file was put in its place, or the folder removed', async () => {
  expect((await enter()).ok).toBe(true);
  openDb(`${path()}.other`).$client.close();
  renameSync(`${path()}.other`, path());
  expect(await enter()).toMatchObject({ ok: false, state: { sentence: expect.stringMatching(GONE) } });
  rmSync(dir, { recursive: true, force: true });
  expect(await enter()).toMatchObject({ ok: false, state: { sentence: expect.stringMatching(GONE) } });
});

it('writing to the file itself is no such thing', async () => {
  expect((await enter()).ok).toBe(true);
  await figuresKeeper().end();
  holder[SERVED]?.db.$client.pragma('wal_checkpoint(TRUNCATE)');
  expect((await enter()).ok).toBe(true);
});
