import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { endEdge } from '@/db/commands/end-edge';
import type { Actor } from '@/lib/access/actor';
import { EndEdgeInput } from '@/lib/shop/command-input';
import {
  atTheVise,
  BLADE,
  button,
  DIE,
  finish,
  LINE,
  recorded as recordedIn,
  round,
  scan,
} from '../../support/at-the-vise';
import { axeViolations, launchBrowser, viewports } from '../../support/browser';
import { entered, may, must } from '../../support/db';
import { ownServer } from '../../support/own-server';
import { type Person, sitDown } from '../../support/person';
import { targetFaults } from '../../support/targets';

// source: hand. What was pressed is what must arrive, once; the figures are counted beside each press.
let shop: Awaited<ReturnType<typeof ownServer>>;
let browser: Browser;
let tech: Person;
const LEAD: Actor = { personId: 'lead-1', name: 'Lead-1', role: 'lead' };

beforeAll(async () => {
  [shop, browser] = await Promise.all([ownServer(), launchBrowser()]);
  tech = await sitDown(browser, { address: shop.address, name: 'Tech-2', device: viewports.phone });
});
afterAll(async () => {
  await browser?.close();
  await shop?.stop();
});

const recorded = (toolId: string) => recordedIn(shop.db, toolId);

it('Q34: with the network cut it counts on, opens anew, and sends in order when it is back; Q18: once', async () => {
  const { page } = tech;
  await atTheVise(page);
  await page.waitForFunction(() => navigator.serviceWorker?.controller !== null);
  await page.reload();
  await page.getByText(/^As of/).waitFor();
  const before = { die: recorded(DIE), blade: recorded(BLADE) };
  await page.context().setOffline(true);
  await round(page);
  await page.getByText('No network.').waitFor();
  await page.getByText(/What changed elsewhere since/).waitFor();
  await button(page, 'Thread').tap();
  await button(page, '+5').tap();
  await page.getByText('5 threads now').waitFor();
  await page.reload();
  await button(page, 'Thread').tap();
  await page.getByText('5 threads now').waitFor();
  await page.getByText('No network.').waitFor();
  expect(await targetFaults(page, { sizePx: 72, gapPx: 31 })).toEqual([]);
  await button(page, 'Cone').tap();
  await button(page, '+1').tap();
  await button(page, '+1').tap();
  await finish(page);
  await page.getByText('2 entries to send.').waitFor();
  expect(recorded(DIE)).toEqual(before.die);

  const batches: string[] = [];
  page.on('request', (request) => {
    if (request.url().endsWith('/bench/entries')) batches.push(request.postData() ?? '');
  });
  await page.context().setOffline(false);
  const after = {
    die: { ends: before.die.ends + 5, good: before.die.good + 5 },
    blade: { ends: before.blade.ends + 2, good: before.blade.good + 2 },
  };
  const both = () => ({ die: recorded(DIE), blade: recorded(BLADE) });
  await expect.poll(both, { timeout: 20_000 }).toEqual(after);
  const sent = batches.map((body) => JSON.parse(body) as { entries: { toolId: string }[] });
  expect(sent.flatMap(({ entries }) => entries.map(({ toolId }) => toolId))).toEqual([DIE, BLADE]);

  const answers = await page.evaluate(async (body) => {
    const twice = await fetch('/bench/entries', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body,
    });
    return ((await twice.json()) as { answers: { outcome: string; sentence: string }[] }).answers;
  }, batches[0] ?? '');
  expect(answers.map(({ outcome }) => outcome)).toEqual(['already', 'already']);
  expect(answers[0]?.sentence).toBe('Already recorded; nothing was counted twice.');
  expect(both()).toEqual(after);
});

it('what the record cannot take, a blade scrapped meanwhile, lands on one screen and is settled there', async () => {
  const { page } = tech;
  const before = recorded(BLADE);
  await page.context().setOffline(true);
  await button(page, 'Cone').tap();
  for (let cone = 0; cone < 3; cone += 1) await button(page, '+1').tap();
  await finish(page);
  const input = EndEdgeInput.parse({ ...entered(), toolId: BLADE, cause: 'worn', to: 'scrapped' });
  must(endEdge(shop.db, may('end-edge', LEAD), input, { nowMs: Date.now() }));
  await page.context().setOffline(false);
  await page.getByText(/It waits to be settled/).waitFor({ timeout: 25_000 });
  expect(recorded(BLADE)).toEqual(before);
  expect(await targetFaults(page, { sizePx: 72, gapPx: 31 })).toEqual([]);
  await page.getByRole('link', { name: 'Settle it' }).tap();
  await page.waitForURL(/\/bench\/conflicts$/);
  const kept = tech.panel(`3 ends cut with ${BLADE}, 3 good, for ${LINE}`);
  await kept.getByText(/has no edge left in service/).waitFor();
  expect(await axeViolations(page)).toEqual([]);
  await kept.getByRole('radio', { name: /Dropped/ }).check();
  await kept.getByRole('textbox', { name: 'In a few words' }).fill('counted on the other blade');
  await kept.getByRole('button', { name: 'Settle it' }).tap();
  await tech
    .panel('Settled')
    .getByText(/dropped, counted on the other blade/)
    .waitFor();
  await page.getByText('Nothing to settle').waitFor();
});

it('a device whose clock is three hours slow says so, and what it enters is set right', async () => {
  const slow = await sitDown(browser, {
    address: shop.address,
    name: 'Tech-2',
    device: viewports.phone,
  });
  const { page } = slow;
  await page.addInitScript(() => {
    const wall = Date.now;
    Date.now = () => wall() - 3 * 3_600_000;
  });
  await page.goto(`/bench?line=${LINE}`);
  await page.getByText(/clock of this device is about 3 hours slow/).waitFor();
  await scan(page, DIE);
  await button(page, '+1').tap();
  await page.getByText('1 thread now').waitFor();
  const fromMs = Date.now();
  await finish(page);
  const last = () =>
    shop.db.$client
      .prepare('SELECT cut_at_ms AS atMs FROM cut WHERE tool_id = ? ORDER BY cut_at_ms DESC LIMIT 1')
      .get(DIE) as { atMs: number };
  await expect.poll(() => last().atMs, { timeout: 20_000 }).toBeGreaterThan(fromMs - 5000);
  expect(last().atMs).toBeLessThan(fromMs + 30_000);
  expect(slow.faults).toEqual([]);
  await slow.leave();
});
