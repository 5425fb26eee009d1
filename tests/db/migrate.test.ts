import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import SqliteDatabase from 'better-sqlite3';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { DatabaseTooNewError, migrate } from '@/db/migrate';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'edgekeep-migrations-'));
  writeFileSync(join(folder, '0001_first.sql'), 'CREATE TABLE first (a INTEGER) STRICT;');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const versionOf = (client: SqliteDatabase.Database) => client.pragma('user_version', { simple: true });
const tablesOf = (client: SqliteDatabase.Database) =>
  client.prepare(`SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name`).pluck().all();

it('brings a database up to date, and does nothing the second time', () => {
  const client = new SqliteDatabase(':memory:');
  migrate(client, folder);
  expect(versionOf(client)).toBe(1);
  const before = client.serialize();
  migrate(client, folder);
  expect(client.serialize().equals(before)).toBe(true);
});

it('takes only the steps that are new', () => {
  const client = new SqliteDatabase(':memory:');
  migrate(client, folder);
  client.prepare('INSERT INTO first VALUES (7)').run();
  writeFileSync(join(folder, '0002_second.sql'), 'CREATE TABLE second (b INTEGER) STRICT;');
  migrate(client, folder);
  expect(versionOf(client)).toBe(2);
  expect(tablesOf(client)).toEqual(['first', 'second']);
  expect(client.prepare('SELECT a FROM first').pluck().all()).toEqual([7]);
});

it('leaves version and tables untouched when a step fails half-way', () => {
  const client = new SqliteDatabase(':memory:');
  migrate(client, folder);
  writeFileSync(
    join(folder, '0002_breaks.sql'),
    'CREATE TABLE second (b INTEGER) STRICT; INSERT INTO nowhere VALUES (1);',
  );
  expect(() => migrate(client, folder)).toThrow('no such table: nowhere');
  expect(versionOf(client)).toBe(1);
  expect(tablesOf(client)).toEqual(['first']);
  expect(client.inTransaction).toBe(false);
});

it('refuses a database from a newer version and changes nothing', () => {
  const client = new SqliteDatabase(':memory:');
  client.pragma('user_version = 5');
  expect(() => migrate(client, folder)).toThrow(DatabaseTooNewError);
  expect(() => migrate(client, folder)).toThrow(
    'This database is at version 5; this Edgekeep knows versions up to 1. Start the newer Edgekeep that wrote it.',
  );
  expect(tablesOf(client)).toEqual([]);
  expect(versionOf(client)).toBe(5);
});

it('refuses a gap or a double in the numbers', () => {
  writeFileSync(join(folder, '0003_gap.sql'), 'SELECT 1;');
  expect(() => migrate(new SqliteDatabase(':memory:'), folder)).toThrow('0003_gap.sql is out of order');
});
