import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { figuresKeeper } from '@/app/_server/figures/keeper';
import { shopView, wakeFigures } from '@/app/_server/outlook';
import type { Db } from '@/db/open';
import { dataVersion } from '@/db/queries/entries';
import { readShopFacts } from '@/db/queries/shop-facts';
import { listCuts } from '@/db/queries/tools';
import { pathOf, writeOpenShop } from '@/db/shop-files';
import { computeOutlook } from '@/lib/outlook/outlook';
import { must } from '../support/db';
import { ownShop } from '../support/own-shop';
import { sender } from '../support/send';

const holder = globalThis as { [key: symbol]: unknown };
const shopDb = () => (holder[SERVED] as { db: Db }).db;
const SERVED = Symbol.for('edgekeep.opened-shop');
const FIGURES = Symbol.for('edgekeep.figures');
const SIZE = { connectionId: '3-8-medium', materialId: '316-cw' };
const TIMEOUT = { timeout: 60_000 };

let dir: string;
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'edgekeep-figures-'));
  writeFileSync(pathOf(dir, 'shop'), ownShop().$client.serialize());
  writeOpenShop(dir, 'shop');
  vi.stubEnv('EDGEKEEP_DATA', dir);
});
afterEach(async () => {
  await figuresKeeper().end();
  shopDb().$client.close();
  delete holder[SERVED];
  delete holder[FIGURES];
  vi.unstubAllEnvs();
  rmSync(dir, { recursive: true });
});

const PATIENT_MS = 30_000;
const left = async () => (await shopView(PATIENT_MS)).outlook.forecast('D-38-01', SIZE);

// source: identity. The figures of another process are those of this one, to the last bit, before and after rows are logged.
it('figures worked out beside the server are those worked out in it', TIMEOUT, async () => {
  for (const ends of [0, 12, 7]) {
    if (ends > 0) must(sender(shopDb()).cut('D-38-01', ends, SIZE));
    const { outlook, asOfMs, db } = await shopView(PATIENT_MS);
    const here = computeOutlook(readShopFacts(shopDb(), { today: outlook.facts.today }));
    expect(asOfMs).toBeNull();
    expect(dataVersion(db)).toBe(dataVersion(shopDb()));
    expect(outlook.lines).toEqual(here.lines);
    expect(outlook.ensemble.residualLife('D-38-01')).toEqual(here.ensemble.residualLife('D-38-01'));
    expect(outlook.ensemble.draws('blade')?.figures).toEqual(here.ensemble.draws('blade')?.figures);
  }
});

// source: hand. A killed process is started again by the next one who asks; nothing is lost, for it only reads.
it('figures go on after their process was killed outright', TIMEOUT, async () => {
  const said = vi.spyOn(console, 'error').mockImplementation(() => undefined);
  const first = await left();
  const pid = figuresKeeper().process.pid();
  expect(pid).toBeGreaterThan(0);
  process.kill(pid as number, 'SIGKILL');
  must(sender(shopDb()).cut('D-38-01', 60, SIZE));
  const next = await left();
  expect(next?.likelyEnds).not.toBe(first?.likelyEnds);
  expect(figuresKeeper().process.pid()).not.toBe(pid);
  // Killed in the middle of its work: the same.
  must(sender(shopDb()).cut('D-38-01', 5, SIZE));
  wakeFigures();
  process.kill(figuresKeeper().process.pid() as number, 'SIGKILL');
  expect((await shopView(PATIENT_MS)).asOfMs).toBeNull();
  expect(said.mock.calls.flat().join()).toContain('Figures are worked out anew');
  said.mockRestore();
});

// source: hand. Whoever will not wait is shown the last figures, marked, beside the record they rest on and no other.
it('never shows figures of one version beside the record of another', TIMEOUT, async () => {
  await left();
  must(sender(shopDb()).cut('D-38-01', 60, SIZE));
  const stale = await shopView(0);
  expect(stale.asOfMs).toBeGreaterThan(0);
  expect(listCuts(stale.db, 'D-38-01')).toHaveLength(0);
  expect(stale.outlook.ensemble.tool('D-38-01')?.exposure).toEqual([]);
  const fresh = await shopView(PATIENT_MS);
  expect(fresh.asOfMs).toBeNull();
  expect(listCuts(fresh.db, 'D-38-01')).toHaveLength(1);
  expect(fresh.outlook.ensemble.tool('D-38-01')?.exposure).toHaveLength(1);
});

// source: hand. A write begins new figures at once: the page after it finds them ready.
it('an entry begins new figures before anybody asks', TIMEOUT, async () => {
  await left();
  must(sender(shopDb()).cut('D-38-01', 60, SIZE));
  wakeFigures();
  must(sender(shopDb()).cut('D-38-01', 6, SIZE));
  wakeFigures();
  await vi.waitUntil(() => figuresKeeper().kept?.version === dataVersion(shopDb()), PATIENT_MS);
  expect((await shopView(0)).asOfMs).toBeNull();
});

// source: hand. Where no process can be had, the server works figures out itself rather than show none.
it('works without the process, where it cannot be had', TIMEOUT, async () => {
  vi.spyOn(console, 'error').mockImplementation(() => undefined);
  const keeper = figuresKeeper();
  vi.spyOn(keeper.process, 'ask').mockRejectedValue(new Error('no process can be had'));
  expect((await left())?.likelyEnds).toBeGreaterThan(0);
  expect(keeper.process.ask).toHaveBeenCalledTimes(2);
  vi.restoreAllMocks();
});
