import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { button, DIE, LINE, recorded as recordedIn } from '../../support/at-the-vise';
import { axeViolations, launchBrowser, viewports } from '../../support/browser';
import { ownServer } from '../../support/own-server';
import { type Person, sitDown } from '../../support/person';

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

const recorded = () => recordedIn(shop.db, DIE);

async function atTheVise(): Promise<void> {
  const { page } = tech;
  await page.goto(`/bench?line=${LINE}&tool=${DIE}`);
  await button(page, '+1').waitFor();
}

// source: hand. One end, then two: what was pressed is what must arrive, once, whichever page sends it.
it('what was finished leaves the device from the next page too: at once, or after its Undo in another tab', async () => {
  const { page } = tech;
  await atTheVise();
  const before = recorded();
  const posts: string[] = [];
  page.context().on('request', (request) => {
    if (request.url().endsWith('/bench/entries')) posts.push(request.postData() ?? '');
  });
  const leaveAfter = async (ends: number) => {
    for (let end = 0; end < ends; end += 1) await button(page, '+1').tap();
    await page.getByText(`${ends} thread${ends === 1 ? '' : 's'} now`).waitFor();
    await button(page, 'Finish').tap();
    await button(page, 'Log it').tap();
    await page.getByText('Finished').waitFor();
    await page.getByRole('link', { name: 'Gauge and accept' }).tap();
    await page.waitForURL(/\/accept\//);
  };
  await leaveAfter(1);
  await page.getByText('1 bench entry sent').waitFor({ timeout: 9000 });
  expect(recorded()).toEqual({ ends: before.ends + 1, good: before.good + 1 });
  expect(posts).toHaveLength(1);

  await atTheVise();
  const other = await page.context().newPage();
  await other.goto('/bench');
  await other.getByText(/^As of/).waitFor();
  await leaveAfter(2);
  const waits = page.getByRole('link', { name: '1 bench entry to send' });
  await waits.waitFor();
  expect(await waits.getAttribute('href')).toBe('/bench');
  expect(await axeViolations(page)).toEqual([]);
  expect(recorded()).toEqual({ ends: before.ends + 1, good: before.good + 1 });
  const after = { ends: before.ends + 3, good: before.good + 3 };
  await expect.poll(() => recorded(), { timeout: 20_000 }).toEqual(after);
  await waits.waitFor({ state: 'detached' });
  expect(posts).toHaveLength(2);
  expect(tech.faults).toEqual([]);
});
