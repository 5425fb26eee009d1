import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { endEdge } from '@/db/commands/end-edge';
import type { Actor } from '@/lib/access/actor';
import { EndEdgeInput } from '@/lib/shop/command-input';
import { axeViolations, launchBrowser, viewports } from '../../support/browser';
import { entered, may, must } from '../../support/db';
import { ownServer } from '../../support/own-server';
import { type Person, sitDown } from '../../support/person';
import { row } from '../../support/send';
import { targetFaults } from '../../support/targets';

// source: hand. What was pressed is what must arrive, once; the figures are counted beside each press.
let shop: Awaited<ReturnType<typeof ownServer>>;
let browser: Browser;
let tech: Person;
const LINE = 'J-086.1';
const DIE = 'D-38-11';
const BLADE = 'B-38-08';
const LEAD: Actor = { personId: 'lead-1', name: 'Lead-1', role: 'lead' };

beforeAll(async () => {
  [shop, browser] = await Promise.all([ownServer(), launchBrowser()]);
  tech = await sitDown(browser, { address: shop.address, name: 'Tech-2', device: viewports.phone });
});
afterAll(async () => {
  await browser?.close();
  await shop?.stop();
});

/** Ends of the edge in hand by the record. */
function recorded(toolId: string): { ends: number; good: number } {
  const use = shop.db.$client
    .prepare(
      'SELECT SUM(ends) AS ends, SUM(good_ends) AS good FROM cut WHERE tool_id = ? AND job_line_id = ?',
    )
    .get(toolId, LINE) as { ends: number | null; good: number | null };
  return { ends: use.ends ?? 0, good: use.good ?? 0 };
}

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true });
const now = (page: Page) => page.getByText(/^\d+ (cone|thread)s? now/).textContent();
/** As the page does by itself every twenty seconds, and when the network or the person comes back. */
const round = (page: Page) => page.evaluate(() => window.dispatchEvent(new Event('focus')));

async function scan(page: Page, toolId: string): Promise<void> {
  await page.keyboard.type(toolId);
  await page.keyboard.press('Enter');
}

/** The die of the line in hand, scanned. */
async function atTheVise(): Promise<Page> {
  const { page } = tech;
  await page.goto('/bench');
  await page.getByRole('button', { name: new RegExp(LINE) }).waitFor();
  await scan(page, DIE);
  await button(page, '+1').waitFor();
  return page;
}

async function finish(page: Page): Promise<void> {
  await button(page, 'Finish').tap();
  await button(page, 'Log it').tap();
  await page.getByText('Finished').waitFor();
}

it('Q12: one scan, and within two seconds verdict, ends and counts stand on one phone screen', async () => {
  const { page } = tech;
  await page.goto('/bench');
  await page.getByRole('button', { name: new RegExp(LINE) }).waitFor();
  expect(await targetFaults(page, { sizePx: 72, gapPx: 31 })).toEqual([]);
  const fromMs = performance.now();
  await scan(page, 'd-38-11');
  const card = page.getByRole('region', { name: `${DIE} for this work` });
  await card
    .getByText(/^(go|swap)/)
    .first()
    .waitFor();
  expect(performance.now() - fromMs).toBeLessThan(2000);
  expect(await card.textContent()).toMatch(/safe, .*likely; this work needs \d+ more/);
  await expect.poll(() => page.evaluate(() => scrollY)).toBe(0);
  for (const part of [card, button(page, '+1'), button(page, '+5'), page.getByText('0 threads now')]) {
    const box = await part.boundingBox();
    expect(box?.y).toBeGreaterThanOrEqual(0);
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(viewports.phone.viewport.height);
  }
  expect(await axeViolations(page)).toEqual([]);
});

it('every target of every bench sheet is 19 mm for a glove, with 8 mm between them', async () => {
  const page = await atTheVise();
  const faults = () => targetFaults(page, { sizePx: 72, gapPx: 31 });
  expect(await faults()).toEqual([]);
  for (const [open, shut] of [
    ['Reject an end', 'Back'],
    ['Stop', 'Back'],
    ['Count the turns', 'Back'],
    ['Finish', 'Back'],
  ] as const) {
    await button(page, open).tap();
    await button(page, shut).waitFor();
    expect(await faults(), open).toEqual([]);
    expect(await axeViolations(page), open).toEqual([]);
    await button(page, shut).tap();
  }
  await button(page, '+1').tap();
  await button(page, 'Undo').waitFor();
  expect(await faults()).toEqual([]);
  await button(page, 'Undo').tap();
  await page.getByText('0 threads now').waitFor();
});

it('counts +1, +5, a reject and a thread by its turns, takes the last back, and finishes in two taps', async () => {
  const page = await atTheVise();
  const before = recorded(DIE);
  await button(page, '+5').tap();
  await button(page, '+1').tap();
  await page.getByText('6 threads now').waitFor();
  await button(page, 'Undo').tap();
  await page.getByText('5 threads now').waitFor();
  await button(page, 'Reject an end').tap();
  await button(page, 'GO ring will not run on').tap();
  await page.getByText('5 threads now, 1 rejected').waitFor();
  await button(page, 'Count the turns').tap();
  // source: hand. 3/8 medium: 10.5 turns a thread, so eleven times forward.
  for (let turn = 0; turn < 11; turn += 1) await button(page, 'One turn forward').tap();
  await page.getByText('Long enough by the count: gauge the length.').waitFor();
  await button(page, 'Thread done: +1').tap();
  await button(page, 'Back').tap();
  await page.getByText('6 threads now, 1 rejected').waitFor();
  await finish(page);
  await button(page, 'Undo').tap();
  await page.getByText('6 threads now, 1 rejected').waitFor();
  await finish(page);
  expect(recorded(DIE)).toEqual(before);
  await expect
    .poll(() => recorded(DIE), { timeout: 20_000 })
    .toEqual({
      ends: before.ends + 7,
      good: before.good + 6,
    });
  expect(await now(page)).toBe('0 threads now');
  expect(tech.faults).toEqual([]);
});

it('two taps on Log it, one right after the other, log once', async () => {
  const page = await atTheVise();
  const before = recorded(DIE);
  await button(page, '+1').tap();
  await button(page, 'Finish').tap();
  await button(page, 'Log it').evaluate((element: HTMLButtonElement) => {
    element.click();
    element.click();
  });
  await page.getByText('Finished').waitFor();
  await expect
    .poll(() => recorded(DIE), { timeout: 20_000 })
    .toEqual({
      ends: before.ends + 1,
      good: before.good + 1,
    });
  await page.getByText(/to send/).waitFor({ state: 'detached' });
});

it('Q34: with the network cut it counts on, opens anew, and sends in order when it is back; Q18: once', async () => {
  const { page } = tech;
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

it('Q27: turning hard is one tap on Stop: set aside, the counts kept', async () => {
  const page = await atTheVise();
  const before = recorded(DIE);
  await button(page, '+1').tap();
  await page.getByText('1 thread now').waitFor();
  await button(page, 'Stop').tap();
  await button(page, 'Turns hard').tap();
  await page.getByText(`${DIE} stopped`).waitFor();
  await expect
    .poll(() => row(shop.db, 'tool', 'id', DIE), { timeout: 20_000 })
    .toMatchObject({ state: 'quarantined', state_reason: 'stopped: turns hard' });
  expect(recorded(DIE)).toEqual({ ends: before.ends + 1, good: before.good + 1 });
});

it('a tool that is not out for any work leads straight to its own verdict; with work in hand it asks first', async () => {
  const { page } = tech;
  await page.goto('/bench');
  await page.getByRole('button', { name: new RegExp(LINE) }).tap();
  await button(page, 'Cone').waitFor();
  await scan(page, 'D-25-09');
  await page.getByRole('link', { name: 'See D-25-09 for this work' }).waitFor();
  expect(await targetFaults(page, { sizePx: 72, gapPx: 31 })).toEqual([]);
  await button(page, 'Other work').tap();
  await scan(page, 'D-56-14');
  await page.waitForURL(/\/tools\/D-56-14/);
  await page.getByRole('heading', { level: 1, name: 'D-56-14' }).waitFor();
});
