import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { DatabaseTooNewError } from '@/db/migrate';
import { openDb } from '@/db/open';
import { dump, testDb, testShop } from '../support/db';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'edgekeep-open-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

it('opens a file with durable commits, foreign keys and a write-ahead log', () => {
  const { $client } = openDb(join(folder, 'shop.sqlite'));
  const pragma = (name: string) => $client.pragma(name, { simple: true });
  // source: published. SQLite documentation, PRAGMA synchronous: 2 is FULL.
  expect([pragma('journal_mode'), pragma('synchronous'), pragma('foreign_keys')]).toEqual(['wal', 2, 1]);
  expect(pragma('busy_timeout')).toBe(5000);
  $client.close();
});

it('a database opened a second time holds what it held', () => {
  const file = join(folder, 'shop.sqlite');
  const first = testShop(openDb(file));
  const before = dump(first);
  first.$client.close();
  const second = openDb(file);
  expect(dump(second)).toEqual(before);
  second.$client.close();
});

it('each copy of the template is a database of its own', () => {
  const one = testShop();
  expect(dump(one).entry?.length).toBeGreaterThan(0);
  expect(dump(testDb()).entry).toEqual([]);
});

it('refuses a newer database and lets go of the file', () => {
  const file = join(folder, 'newer.sqlite');
  const db = openDb(file);
  db.$client.pragma('user_version = 99');
  db.$client.close();
  expect(() => openDb(file)).toThrow(DatabaseTooNewError);
  rmSync(file);
});

it('refuses a file that is no database', () => {
  const file = join(folder, 'letter.txt');
  writeFileSync(
    file,
    'Dear crib, this is no database at all, only a letter that is long enough. '.repeat(20),
  );
  expect(() => openDb(file)).toThrow('file is not a database');
});
