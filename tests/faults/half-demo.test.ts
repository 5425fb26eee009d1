import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import SqliteDatabase from 'better-sqlite3';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { createDemo } from '@/app/_start/create-demo';
import { root } from '../support/server';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'edgekeep-half-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function prepare(dataDir: string) {
  const args = ['--import', 'tsx', 'app/_start/prepare.ts'];
  return spawn(process.execPath, args, {
    cwd: root,
    env: { ...process.env, EDGEKEEP_DATA: dataDir },
    stdio: 'ignore',
  });
}

const patienceMs = 120_000;

const isFilling = (dataDir: string) =>
  existsSync(dataDir) && readdirSync(dataDir).some((name) => name.includes('.filling-'));

/** Kills a first run this long after it began to fill the demo; true when that was in the middle. */
async function killWhileFilling(dataDir: string, afterMs: number): Promise<boolean> {
  const child = prepare(dataDir);
  const closed = once(child, 'close');
  while (!isFilling(dataDir) && child.exitCode === null) await wait(1);
  await wait(afterMs);
  child.kill('SIGKILL');
  await closed;
  return isFilling(dataDir);
}

/** How many rows each table of a database holds, after SQLite has found it whole. */
function census(path: string): Record<string, unknown> {
  const db = new SqliteDatabase(path, { readonly: true });
  expect(db.pragma('integrity_check', { simple: true })).toBe('ok');
  const tables = db
    .prepare("select name from sqlite_master where type = 'table' order by name")
    .pluck()
    .all();
  const rows = tables.map((name) => [name, db.prepare(`select count(*) from "${name}"`).pluck().get()]);
  db.close();
  return Object.fromEntries(rows);
}

// source: identity. A demo made after kills holds row for row as much as one made in peace.
it(
  'a kill while the demo is filled leaves no half demo, and the next start makes a whole one',
  async () => {
    const peaceful = join(folder, 'peaceful');
    expect(await once(prepare(peaceful), 'close')).toEqual([0, null]);
    const whole = census(join(peaceful, 'demo.sqlite'));
    expect(Object.values(whole).some((rows) => Number(rows) > 0)).toBe(true);

    const killed = join(folder, 'killed');
    const hits: boolean[] = [];
    for (const afterMs of [0, 3, 10, 30, 100]) {
      hits.push(await killWhileFilling(killed, afterMs));
      if (existsSync(join(killed, 'demo.sqlite'))) {
        expect(census(join(killed, 'demo.sqlite'))).toEqual(whole);
        rmSync(killed, { recursive: true });
      }
    }
    expect(hits).toContain(true);

    expect(await once(prepare(killed), 'close')).toEqual([0, null]);
    expect(readdirSync(killed).sort()).toEqual(['demo.sqlite', 'open-shop']);
    expect(census(join(killed, 'demo.sqlite'))).toEqual(whole);
  },
  patienceMs,
);

// source: hand. Whatever stops the filling, a full disk above all, is not to leave a half-filled file in the way.
it('a filling that fails leaves nothing behind', () => {
  let left = 400;
  const newId = () => {
    left -= 1;
    if (left < 0) throw new Error('no more');
    return `demo-entry-${left}`;
  };
  expect(() => createDemo(folder, { now: Date.UTC(2026, 2, 2, 12), newId })).toThrow('no more');
  expect(readdirSync(folder)).toEqual([]);
});
