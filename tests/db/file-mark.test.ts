import { mkdtempSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { markFile, requireInPlace, ShopFileGoneError } from '@/db/file-mark';

let dir: string;
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'edgekeep-mark-'));
});
afterEach(() => rmSync(dir, { recursive: true, force: true }));

// source: hand. A file that is written to stays itself; moved away it is missed, put back it is known again, and another
// file under its name is not it.
it('tells a file from one put in its place', () => {
  const path = join(dir, 'shop.sqlite');
  writeFileSync(path, 'one');
  const file = markFile(path);
  writeFileSync(path, 'one and more');
  expect(() => requireInPlace(file)).not.toThrow();
  renameSync(path, join(dir, 'away'));
  expect(() => requireInPlace(file)).toThrow(ShopFileGoneError);
  renameSync(join(dir, 'away'), path);
  expect(() => requireInPlace(file)).not.toThrow();
  writeFileSync(join(dir, 'other'), 'two');
  renameSync(join(dir, 'other'), path);
  expect(() => requireInPlace(file)).toThrow(/^Nothing was entered: shop\.sqlite in the data folder was /);
});
