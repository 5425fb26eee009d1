import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { launchBrowser, viewports } from '../../support/browser';
import { choose, sitDown } from '../../support/person';
import { shopAddress } from '../../support/shop-address';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

// source: hand. The demo shop: F-L04 is the oil that runs out first; F-L02 was opened 14 months ago and keeps 12.
it('Q8: the bottle to take first is named with why not another; the old one is barred, and a technician may not extend it', async () => {
  const tech = await sitDown(browser, {
    address: shopAddress(),
    name: 'Tech-2',
    device: viewports.tablet,
  });
  const { page, panel, form } = tech;
  await page.goto('/fluid');
  expect(await panel('Use first').getByRole('link').first().textContent()).toBe('F-L04');
  await panel('Use first')
    .getByText(/^Not for this/)
    .waitFor();
  expect(await panel('Use first').textContent()).toMatch(
    /F-L02 was opened 14 months ago and keeps 12 months/,
  );
  await page.goto('/fluid/F-L02');
  await panel('May it be used?').getByText('Not to be used').waitFor();
  await panel('May it be used?')
    .getByText(/Use .* first/)
    .waitFor();
  const extend = form('Extend its life');
  await extend.getByRole('textbox', { name: 'Inspected, and found' }).fill('clear, no water');
  const on = await form('Dispose of it').getByLabel('On', { exact: true }).inputValue();
  await extend.getByLabel('Good until').fill(`${Number(on.slice(0, 4)) + 1}${on.slice(4, 8)}01`);
  await extend.getByRole('textbox', { name: 'Why' }).fill('trial thread cut clean');
  await extend.getByRole('button', { name: 'Extend it' }).click();
  const refusal = extend.getByRole('alert');
  await refusal.waitFor();
  expect(await refusal.textContent()).toMatch(/lead|quality/i);
  await page.reload();
  await panel('May it be used?').getByText('Not to be used').waitFor();
  expect(tech.faults).toEqual([]);
  await tech.leave();
});

// source: hand. A bottle is opened once: after that its opened life runs, and the form to open it is gone.
it('the attendant opens a bottle, and it is out of the running for titanium while its chlorine is not known', async () => {
  const crib = await sitDown(browser, { address: shopAddress(), name: 'Crib-1' });
  const { page, panel, form } = crib;
  await page.goto('/fluid/F-L07');
  await form('Open').getByRole('button', { name: 'Mark as opened' }).click();
  await page.getByRole('status').filter({ hasText: 'F-L07' }).waitFor();
  expect(await form('Open').count()).toBe(0);
  await page.goto('/fluid');
  await choose(panel('Use first').getByRole('combobox', { name: 'Material' }), /^Titanium/);
  await panel('Use first').getByRole('button', { name: 'Show' }).click();
  await page.waitForURL(/material=/);
  // source: common practice, no source. Nothing chlorinated on titanium, and what nobody knows counts as chlorinated.
  expect(await panel('Use first').getByRole('link').first().textContent()).not.toBe('F-L07');
  expect(await panel('Use first').getByRole('listitem').filter({ hasText: 'F-L07' }).textContent()).toMatch(
    /chlorin/,
  );
  expect(crib.faults).toEqual([]);
  await crib.leave();
});
