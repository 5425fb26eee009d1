import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { launchBrowser, viewports } from '../../support/browser';
import { shopAddress } from '../../support/shop-address';

let browser: Browser;
let context: BrowserContext;
let page: Page;
beforeAll(async () => {
  browser = await launchBrowser();
  context = await browser.newContext({
    ...viewports.tablet,
    javaScriptEnabled: false,
    baseURL: shopAddress(),
  });
  context.setDefaultTimeout(15_000);
  page = await context.newPage();
});
afterAll(() => browser.close());

// source: hand. The demo shop has the order PO-118 for the dies that job J-087 waits for, and one live 3/8 die, D-38-11.
it('Q3: an order slips and a die breaks: tried on the plan without script, kept in the address, nothing entered', async () => {
  await page.goto('/ledger');
  const entered = await page.getByRole('main').textContent();
  await page.goto('/plan/what-if?orderId=PO-118');
  await page.getByRole('textbox', { name: 'Later by' }).fill('21');
  await page.getByRole('button', { name: 'Try it: An order slips' }).click();
  await page.getByText('Order PO-118 comes 21 days later', { exact: true }).waitFor();
  await page.getByText('A tool is lost or broken', { exact: true }).click();
  await page.getByRole('combobox', { name: 'Tool' }).selectOption('D-38-11');
  await page.getByRole('button', { name: 'Try it: A tool is lost or broken' }).click();
  await page.getByText('D-38-11 is lost or broken', { exact: true }).waitFor();
  const kept = new URL(page.url()).searchParams.getAll('c');
  expect(kept).toEqual(['slip-order~PO-118~21', 'lose-tool~D-38-11']);
  const row = page.getByRole('row', { name: /Job J-087/ });
  expect(await row.textContent()).toMatch(/at risk.*cannot make now/s);
  await page.getByRole('link', { name: /^Leave out.*PO-118/ }).click();
  await page.waitForURL((url) => url.searchParams.getAll('c').length === 1);
  await page.goto('/ledger');
  expect(await page.getByRole('main').textContent()).toBe(entered);
});
