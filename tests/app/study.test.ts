import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { studyState } from '@/app/_server/study';
import { type Db, openDb } from '@/db/open';
import { pathOf, writeOpenShop } from '@/db/shop-files';
import { must } from '../support/db';
import { ownShop } from '../support/own-shop';
import { sender } from '../support/send';

const holder = globalThis as { [key: symbol]: unknown };
const SERVED = Symbol.for('edgekeep.opened-shop');
const STUDIES = Symbol.for('edgekeep.studies');

let dir: string;
let db: Db;

beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'edgekeep-study-'));
  writeFileSync(pathOf(dir, 'shop'), ownShop().$client.serialize());
  writeOpenShop(dir, 'shop');
  vi.stubEnv('EDGEKEEP_DATA', dir);
  db = openDb(pathOf(dir, 'shop'));
  holder[SERVED] = { name: 'shop', db };
});
afterEach(() => {
  vi.unstubAllEnvs();
  delete holder[SERVED];
  delete holder[STUDIES];
  db.$client.close();
  rmSync(dir, { recursive: true });
});

async function settled(name: 'comparisons' | 'backtest') {
  await vi.waitUntil(() => !studyState(name).working, { timeout: 60_000, interval: 100 });
  return studyState(name);
}

// source: hand. Asking never waits; what is found is kept until the record moves, and shown while it is worked out anew.
it('works a study out beside the server, and again when the record has moved', {
  timeout: 120_000,
}, async () => {
  expect(studyState('comparisons')).toEqual({ found: undefined, working: true, failed: false });
  const first = await settled('comparisons');
  expect(first).toEqual({ found: { judged: [], tooLittle: 0, holds: [] }, working: false, failed: false });
  const size = { connectionId: '3-8-medium', materialId: '316-cw', heat: 'H1' };
  must(sender(db).cut('D-38-01', 4, size));
  expect(studyState('comparisons')).toMatchObject({ found: first.found, working: true });
  expect((await settled('comparisons')).found).toMatchObject({ judged: [], tooLittle: 1 });
});

// source: hand. Two studies asked for at once are worked out one after the other.
it('serves the next study when the first is done', { timeout: 120_000 }, async () => {
  must(sender(db).cut('D-38-01', 4, { connectionId: '3-8-medium', materialId: '316-cw' }));
  expect([studyState('comparisons').working, studyState('backtest').working]).toEqual([true, true]);
  await settled('comparisons');
  const { found } = await settled('backtest');
  expect(found).toMatchObject({ rows: 1, card: { open: 0 } });
});

// source: hand. A shop that cannot be read is said to have failed, not to be worked on for ever.
it('says so when a study cannot be worked out', { timeout: 120_000 }, async () => {
  vi.stubEnv('EDGEKEEP_DATA', join(dir, 'nowhere'));
  expect(studyState('comparisons').working).toBe(true);
  expect(await settled('comparisons')).toEqual({ found: undefined, working: false, failed: true });
});
