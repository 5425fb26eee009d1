import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import {
  atTheVise,
  button,
  DIE,
  finish,
  LINE,
  now,
  recorded as recordedIn,
  scan,
} from '../../support/at-the-vise';
import { axeViolations, launchBrowser, viewports } from '../../support/browser';
import { ownServer } from '../../support/own-server';
import { type Person, sitDown } from '../../support/person';
import { row } from '../../support/send';
import { targetFaults } from '../../support/targets';

// source: hand. What was pressed is what must arrive, once; the figures are counted beside each press.
let shop: Awaited<ReturnType<typeof ownServer>>;
let browser: Browser;
let tech: Person;

beforeAll(async () => {
  [shop, browser] = await Promise.all([ownServer(), launchBrowser()]);
  tech = await sitDown(browser, { address: shop.address, name: 'Tech-2', device: viewports.phone });
});
afterAll(async () => {
  await browser?.close();
  await shop?.stop();
});

const recorded = (toolId: string) => recordedIn(shop.db, toolId);

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
  const { page } = tech;
  await atTheVise(page);
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
  const { page } = tech;
  await atTheVise(page);
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
  const { page } = tech;
  await atTheVise(page);
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

it('Q27: turning hard is one tap on Stop: set aside, the counts kept', async () => {
  const { page } = tech;
  await atTheVise(page);
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
