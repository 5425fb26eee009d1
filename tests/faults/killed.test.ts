import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, expect, it } from 'vitest';
import { replay } from '@/db/ledger/replay';
import { openDb } from '@/db/open';
import { startChild } from '../support/child';
import { DIE, dump, receive, testDb, testShop } from '../support/db';

const folder = mkdtempSync(join(tmpdir(), 'edgekeep-killed-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const ROUNDS = 8;

it('every acknowledged entry is there after kill -9, and the kept tables equal its replay', async () => {
  const file = join(folder, 'shop.sqlite');
  const made = testShop(openDb(file));
  receive(made, 'D-56-01', DIE);
  receive(made, 'D-56-02', DIE);
  made.$client.close();
  const acknowledged: string[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    const child = startChild('tests/faults/_child/log-forever.ts', [file, String(round)]);
    acknowledged.push(await child.nextLine());
    // Moments spread over the write cycle, which takes about a millisecond: 0 to 60 ms in uneven steps.
    await sleep((round * 17.3) % 61);
    acknowledged.push(...(await child.kill()));
    expect(child.process.signalCode).toBe('SIGKILL');
    checkWhole(file, acknowledged);
  }
  expect(acknowledged.length).toBeGreaterThan(ROUNDS);
}, 120_000);

function checkWhole(file: string, acknowledged: readonly string[]): void {
  const db = openDb(file);
  expect(db.$client.pragma('integrity_check', { simple: true })).toBe('ok');
  expect(db.$client.pragma('foreign_key_check')).toEqual([]);
  const there = new Set(db.$client.prepare(`SELECT id FROM entry WHERE kind = 'cut-logged'`).pluck().all());
  expect(acknowledged.filter((id) => !there.has(id))).toEqual([]);
  // A kill may fall between the commit and the word of it: at most one entry more in each round.
  expect(there.size - acknowledged.length).toBeLessThanOrEqual(ROUNDS);
  const again = testDb();
  replay(db, again);
  expect(dump(again)).toEqual(dump(db));
  db.$client.close();
}
