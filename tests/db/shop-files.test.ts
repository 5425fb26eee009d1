import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  dataDir,
  hasShop,
  pathOf,
  readOpenShop,
  syncFolder,
  UnknownShopError,
  writeOpenShop,
} from '@/db/shop-files';

let dir: string;
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'edgekeep-files-'));
});
afterEach(() => rmSync(dir, { recursive: true, force: true }));

describe('the data folder', () => {
  it('is the folder "data" unless the environment names another, and always absolute', () => {
    expect(dataDir({})).toBe(resolve('data'));
    expect(dataDir({ EDGEKEEP_DATA: '' })).toBe(resolve('data'));
    expect(dataDir({ EDGEKEEP_DATA: 'elsewhere/kept' })).toBe(resolve('elsewhere', 'kept'));
    expect(dataDir({ EDGEKEEP_DATA: dir })).toBe(dir);
  });

  it('keeps the two shops in files of their own', () => {
    expect(pathOf(dir, 'demo')).toBe(join(dir, 'demo.sqlite'));
    expect(pathOf(dir, 'shop')).toBe(join(dir, 'shop.sqlite'));
    expect(hasShop(dir, 'demo')).toBe(false);
    writeFileSync(pathOf(dir, 'demo'), '');
    expect([hasShop(dir, 'demo'), hasShop(dir, 'shop')]).toEqual([true, false]);
  });
});

describe('the choice of the shop being served', () => {
  it('is the demo in a new folder, then what was chosen last', () => {
    expect(readOpenShop(dir)).toBe('demo');
    for (const shop of ['shop', 'demo', 'shop'] as const) {
      writeOpenShop(dir, shop);
      expect(readOpenShop(dir)).toBe(shop);
    }
  });

  it('is one word in a text file and leaves nothing else behind', () => {
    writeOpenShop(dir, 'shop');
    expect(readdirSync(dir)).toEqual(['open-shop']);
    expect(readFileSync(join(dir, 'open-shop'), 'utf8')).toBe('shop\n');
  });

  it('is read with or without its line end, and refused when it names no shop', () => {
    writeFileSync(join(dir, 'open-shop'), 'shop');
    expect(readOpenShop(dir)).toBe('shop');
    for (const wrong of ['', 'Shop', 'demo shop', 'shop.sqlite']) {
      writeFileSync(join(dir, 'open-shop'), wrong);
      expect(() => readOpenShop(dir)).toThrow(UnknownShopError);
    }
  });

  it('leaves the old choice standing when the new one cannot be written', () => {
    writeOpenShop(dir, 'demo');
    const gone = join(dir, 'not-there');
    expect(() => writeOpenShop(gone, 'shop')).toThrow('ENOENT');
    expect(existsSync(gone)).toBe(false);
    expect(readOpenShop(dir)).toBe('demo');
  });

  it('syncs a folder that is there and throws for one that is not', () => {
    expect(() => syncFolder(dir)).not.toThrow();
    if (process.platform !== 'win32') expect(() => syncFolder(join(dir, 'not-there'))).toThrow('ENOENT');
  });
});
