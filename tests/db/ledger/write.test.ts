import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import type { Ledger } from '@/db/ledger/ledger';
import { write } from '@/db/ledger/write';
import { type Db, openDb } from '@/db/open';
import { ok, refuse } from '@/lib/result';
import { dump, ENV, envelope, may, sentence, testShop } from '../../support/db';

const allowed = may('set-up-shop');
const newcomer = (ledger: Ledger, id: string) =>
  ledger.record({
    ...envelope(),
    ...{ kind: 'person-set', subjectId: id, payload: { id, name: id, role: 'lead' } },
  });

let db: Db;
beforeEach(() => {
  db = testShop();
});

it('a refusal takes back all that the command had written before it', () => {
  const before = dump(db);
  const result = write(db, allowed, ENV, (ledger) => {
    newcomer(ledger, 'one');
    newcomer(ledger, 'two');
    return refuse('no', 'Not like this.');
  });
  expect(sentence(result)).toBe('Not like this.');
  expect(dump(db)).toEqual(before);
});

it('a bug takes everything back too, and is thrown on', () => {
  const before = dump(db);
  const work = (ledger: Ledger) => {
    newcomer(ledger, 'one');
    throw new Error('a bug');
  };
  expect(() => write(db, allowed, ENV, work)).toThrow('a bug');
  expect(dump(db)).toEqual(before);
  expect(db.$client.inTransaction).toBe(false);
});

it('several entries of one command see each other, and carry its batch', () => {
  const result = write(
    db,
    allowed,
    ENV,
    (ledger) => {
      newcomer(ledger, 'one');
      return ok(ledger.find('person', 'one')?.name);
    },
    'batch-1',
  );
  expect(result).toEqual({ ok: true, value: 'one' });
  const batch = db.$client.prepare(`SELECT subject_id FROM entry WHERE batch_id = 'batch-1'`).pluck().all();
  expect(batch).toEqual(['one']);
});

it('a reused entry ID that the database catches is a bug, not a sentence', () => {
  const work = () => {
    db.$client.exec(`INSERT INTO entry SELECT NULL, id, kind, subject_kind, subject_id, actor_id, device_at_ms,
      server_at_ms, reason, payload, reverses_id, batch_id FROM entry LIMIT 1`);
    return ok(null);
  };
  expect(() => write(db, allowed, ENV, work)).toThrow('an entry is never replaced');
});

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'edgekeep-write-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

it('a record held by another process for too long is busy, in a sentence', () => {
  const file = join(folder, 'shop.sqlite');
  const [one, two] = [testShop(openDb(file)), openDb(file)];
  two.$client.pragma('busy_timeout = 20');
  one.$client.exec('BEGIN IMMEDIATE');
  const result = write(two, allowed, ENV, (ledger) => newcomer(ledger, 'late'));
  expect(sentence(result)).toBe('Nothing was changed: the record is busy. Try again in a moment.');
  one.$client.exec('ROLLBACK');
  expect(write(two, allowed, ENV, (ledger) => newcomer(ledger, 'late')).ok).toBe(true);
  for (const { $client } of [one, two]) $client.close();
});

it('a record that may only be read says so', () => {
  db.$client.pragma('query_only = ON');
  const result = write(db, allowed, ENV, (ledger) => newcomer(ledger, 'late'));
  expect(sentence(result)).toBe('Nothing was changed: this record can be read but not written.');
});
