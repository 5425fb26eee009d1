import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { launchBrowser } from '../../support/browser';
import { type Person, sitDown } from '../../support/person';
import { shopAddress } from '../../support/shop-address';

let browser: Browser;
let lead: Person;
beforeAll(async () => {
  browser = await launchBrowser();
});
beforeEach(async () => {
  lead = await sitDown(browser, { address: shopAddress(), name: 'Lead-1' });
});
afterEach(async () => {
  expect(lead.faults).toEqual([]);
  await lead.leave();
});
afterAll(() => browser.close());

// source: hand. From the crib to a part's curve, its figures as a table, and on to one of its tools.
it('the lead follows a part from the crib to its curve and to a tool behind it', async () => {
  const { page, panel } = lead;
  await page.goto('/tools');
  await page.getByRole('link', { name: 'How long they last' }).click();
  await page.getByRole('heading', { level: 1, name: 'Wear' }).waitFor();
  expect(await panel('Blades').textContent()).toMatch(/about \d+ \(\d+ to \d+\) cones/);
  await panel('Dies')
    .getByRole('link', { name: /9.16 threading die/ })
    .click();
  await page.waitForURL(/\/wear\/die-9-16$/);
  await page.getByText('Figures', { exact: true }).click();
  await page.getByRole('table', { name: 'How long they last, as estimated' }).waitFor();
  await page.getByRole('table', { name: 'Your own edges' }).waitFor();
  await panel('The edges').getByRole('link').first().click();
  await page.waitForURL(/\/tools\/D-/);
});

// source: hand. What was said is refused at its field, kept, and saved once it can be read; the page then says whose it is.
it('the lead says what is believed of blades', async () => {
  const { page, form } = lead;
  await page.goto('/wear');
  await page.getByText('Blades: this project’s default, not set by your shop').click();
  const evenness = form('What is believed of blades').getByRole('textbox', { name: 'Evenness' });
  await evenness.fill('two');
  await page.getByRole('button', { name: 'Save for blades' }).click();
  await page.getByRole('alert').filter({ hasText: 'The shape must be a number.' }).first().waitFor();
  expect(await evenness.inputValue()).toBe('two');
  await evenness.fill('2');
  await page.getByRole('button', { name: 'Save for blades' }).click();
  await page
    .getByRole('status')
    .filter({ hasText: 'Saved. Every estimate now starts from these.' })
    .waitFor();
  await page.getByText('Blades: set by your shop').waitFor();
});

// source: hand. The replay takes its time; the page says so and then shows it by itself.
it('the scorecard is worked out while the page waits for it', { timeout: 300_000 }, async () => {
  const { page } = lead;
  await page.goto('/');
  await page.getByRole('link', { name: 'How often was it right?' }).click();
  await page.getByRole('heading', { level: 1, name: 'Scorecard' }).waitFor();
  const replay = lead.panel('Had it been asked all along');
  await replay.getByText(/^Of \d+ cases it called \d+ wrong/).waitFor({ timeout: 280_000 });
  expect(await replay.textContent()).toMatch(/When it said \d(\.\d)? in 10, \d(\.\d)? in 10 finished\./);
});
