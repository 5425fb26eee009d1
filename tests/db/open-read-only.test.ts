import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { openDb } from '@/db/open';
import { openReadOnly } from '@/db/open-read-only';
import { listTools } from '@/db/queries/tools';
import { DIE, receive, testShop } from '../support/db';

let dir: string;
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'edgekeep-read-'));
});
afterEach(() => rmSync(dir, { recursive: true }));

// source: hand. It sees what another connection has written, and can write nothing itself.
it('reads beside whoever writes, and writes nothing', () => {
  const path = join(dir, 'shop.sqlite');
  const writer = openDb(path);
  const reader = openReadOnly(path);
  expect(listTools(reader)).toEqual([]);
  receive(testShop(writer), 'D-56-01', DIE);
  expect(listTools(reader).map(({ id }) => id)).toEqual(['D-56-01']);
  expect(() => reader.$client.exec('DELETE FROM tool')).toThrow(/readonly/);
  for (const db of [reader, writer]) db.$client.close();
});

// source: hand. Nothing is made where nothing is.
it('makes no database', () => {
  expect(() => openReadOnly(join(dir, 'gone.sqlite'))).toThrow();
});
