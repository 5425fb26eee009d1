import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { openDb } from '@/db/open';
import { openSnapshot } from '@/db/queries/snapshot';
import { listTools } from '@/db/queries/tools';
import { DIE, receive, testShop } from '../../support/db';

const dir = mkdtempSync(join(tmpdir(), 'edgekeep-snapshot-'));
afterAll(() => rmSync(dir, { recursive: true }));

// source: published. SQLite, "Isolation in SQLite": in WAL mode a read transaction sees the database as it was when it began.
it('sees nothing that is written after it was opened, and keeps nobody from writing', () => {
  const path = join(dir, 'shop.sqlite');
  const db = testShop(openDb(path));
  receive(db, 'D-56-01', DIE);
  const before = openSnapshot(path);
  receive(db, 'D-56-02', DIE);
  const after = openSnapshot(path);
  expect(listTools(before.db).map(({ id }) => id)).toEqual(['D-56-01']);
  expect(listTools(after.db).map(({ id }) => id)).toEqual(['D-56-01', 'D-56-02']);
  expect(after.version).toBeGreaterThan(before.version);
  before.close();
  after.close();
  db.$client.close();
  expect(() => openSnapshot(join(dir, 'nowhere.sqlite'))).toThrow();
});
