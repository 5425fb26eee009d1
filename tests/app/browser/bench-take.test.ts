import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { launchBrowser, viewports } from '../../support/browser';
import { sitDown } from '../../support/person';
import { shopAddress } from '../../support/shop-address';
import { targetFaults } from '../../support/targets';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

// source: hand. Taken without network it is still in the crib by the record; with network it is out, then given back.
it('Q34: a die is taken for the work in hand without network, and given back', async () => {
  const tech = await sitDown(browser, {
    address: shopAddress(),
    name: 'Tech-3',
    device: viewports.phone,
  });
  const { page } = tech;
  await page.goto('/bench');
  await page.getByRole('button', { name: /J-088\.1/ }).tap();
  await page.getByRole('button', { name: 'Thread', exact: true }).tap();
  await page.getByText('No die is out for this line.').waitFor();
  await page.context().setOffline(true);
  await page.getByPlaceholder('Scan a tool').fill('d-56-14');
  await page.keyboard.press('Enter');
  const take = page.getByRole('button', { name: 'Take D-56-14 for this work' });
  await take.waitFor();
  expect(await targetFaults(page, { sizePx: 72, gapPx: 31 })).toEqual([]);
  await take.tap();
  await page.getByText(/D-56-14 taken for this work/).waitFor();
  await page.context().setOffline(false);
  await page.evaluate(() => window.dispatchEvent(new Event('focus')));
  const card = page.getByRole('region', { name: 'D-56-14 for this work' });
  await card.getByText(/safe, .* likely; this work needs 20 more/).waitFor({ timeout: 30_000 });
  await page.getByRole('button', { name: 'Give it back' }).tap();
  expect(await targetFaults(page, { sizePx: 72, gapPx: 31 })).toEqual([]);
  await page.getByRole('button', { name: 'In order', exact: true }).tap();
  await page.getByText('D-56-14 given back').waitFor();
  await page.getByText('No die is out for this line.').waitFor({ timeout: 30_000 });
  // The network was cut on purpose: what the browser says of that is no fault.
  expect(tech.faults.filter((fault) => !/ERR_INTERNET_DISCONNECTED|Failed to fetch/.test(fault))).toEqual([]);
  await tech.leave();
});
