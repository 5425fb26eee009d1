import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { dayText, inDays } from '@/app/_shared/format';
import { addDays } from '@/lib/calendar';
import { launchBrowser } from '../../support/browser';
import { choose, type Person, sitDown } from '../../support/person';
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

/** The shop's today, as the job form offers it. */
async function shopToday(page: Page): Promise<string> {
  await page.goto('/plan/jobs/new');
  return page.getByLabel('Start').first().inputValue();
}

async function fillLine(line: number, given: { ends: string; material: string; start: string; due: string }) {
  const panel = lead.panel(`Line ${line}`);
  await choose(panel.getByRole('combobox', { name: 'Material' }), given.material);
  await panel.getByRole('textbox', { name: 'Ends' }).fill(given.ends);
  await panel.getByLabel('Start').fill(given.start);
  await panel.getByLabel('Due').fill(given.due);
}

it('enters a job of two sizes, one in the table and one not, and reads what is missing without a dimension', async () => {
  const { page, panel } = lead;
  const today = await shopToday(page);
  await page.getByRole('textbox', { name: 'Job number' }).fill('T-501');
  await page.getByRole('textbox', { name: 'What it is' }).fill('Hydrophone mast lines');
  const dates = { start: addDays(today, 40), due: addDays(today, 45) };
  await choose(panel('Line 1').getByRole('combobox', { name: 'Size and service' }), /^3⁄4 medium/);
  await fillLine(1, { ends: '4', material: '316 cold-worked', ...dates });
  await page.getByRole('button', { name: 'Add a line' }).click();
  await panel('Line 2').getByText('Another size, not in the table').click();
  await panel('Line 2').getByRole('textbox', { name: 'Tube size' }).fill('1');
  await choose(panel('Line 2').getByRole('combobox', { name: 'Service' }).last(), 'high pressure');
  await fillLine(2, { ends: '6', material: '316 cold-worked', ...dates });
  await page.getByRole('button', { name: 'Put it on the plan' }).click();
  const done = page.getByRole('status').filter({ hasText: 'Job T-501 is on the plan.' });
  await done.waitFor();
  expect(await done.getByRole('listitem').nth(0).textContent()).toMatch(/4 ends.*can make|4 ends.*at risk/);
  expect(await done.getByRole('listitem').nth(1).textContent()).toMatch(
    /6 ends, 1 in high pressure.*cannot make now/,
  );
  await done.getByRole('link', { name: /6 ends/ }).click();
  await page.waitForURL(/T-501\.2/);
  const set = panel('Complete set');
  for (const item of [
    'Threading die',
    'Threading guide',
    'GO ring',
    'NOT GO ring',
    'Cone gauge',
    'Coning blade',
  ]) {
    expect(await set.getByRole('row', { name: new RegExp(`^${item} `) }).textContent()).toContain('missing');
  }
  const said = ((await page.getByRole('main').textContent()) ?? '').replace(/1 in high pressure/g, '');
  expect(said).toContain('No dimension is assumed');
  expect(said).not.toMatch(/\d\s*(mm|TPI|threads per inch)\b|°|\bUNF\b|\bUNS\b/);
  expect(
    await page
      .getByRole('main')
      .getByRole('img', { name: /drawn to scale/ })
      .count(),
  ).toBe(0);
});

it('refuses a job that is due before it starts, with what was typed kept', async () => {
  const { page, panel } = lead;
  const today = await shopToday(page);
  await page.getByRole('textbox', { name: 'Job number' }).fill('T-502');
  await choose(panel('Line 1').getByRole('combobox', { name: 'Size and service' }), /^9⁄16 medium/);
  await fillLine(1, {
    ends: '8',
    material: '316 cold-worked',
    start: addDays(today, 9),
    due: addDays(today, 3),
  });
  await page.getByRole('button', { name: 'Put it on the plan' }).click();
  await page.getByRole('main').getByRole('alert').waitFor();
  expect(await page.getByRole('main').getByRole('alert').textContent()).toMatch(/due|start/i);
  expect(await page.getByRole('textbox', { name: 'Job number' }).inputValue()).toBe('T-502');
  expect(await panel('Line 1').getByRole('textbox', { name: 'Ends' }).inputValue()).toBe('8');
  expect(await panel('Line 1').getByLabel('Due').inputValue()).toBe(addDays(today, 3));
});

it('places an order, slips it, and receives it', async () => {
  const { page, panel, form } = lead;
  const today = await shopToday(page);
  await page.goto('/plan/orders');
  await page.getByRole('link', { name: 'Write down an order' }).click();
  await choose(page.getByRole('combobox', { name: 'Part' }), /threading die: 9⁄16/);
  await page.getByRole('button', { name: 'Go on' }).click();
  await page.getByText('LH').first().waitFor();
  await form('Order').getByRole('textbox', { name: 'Order number' }).fill('T-PO-7');
  await form('Order').getByLabel('Promised for').fill(addDays(today, 10));
  await form('Order').getByRole('button', { name: 'Write the order down' }).click();
  await page.getByRole('status').getByText('Order T-PO-7 is written down.').waitFor();
  const row = panel('On order').getByRole('row', { name: /^T-PO-7/ });
  expect(await row.textContent()).toContain(inDays(addDays(today, 10), today));

  await row.getByText('It slipped').click();
  await row.getByLabel('Now expected').fill(addDays(today, 31));
  await row.getByRole('textbox', { name: 'What they said' }).fill('no bar stock');
  await row.getByRole('button', { name: 'Write it down' }).click();
  await row.getByText(inDays(addDays(today, 31), today), { exact: true }).waitFor();
  expect(await row.textContent()).toContain(dayText(addDays(today, 10), today));

  await row.getByRole('link', { name: 'It came: receive it' }).click();
  const receive = form('Receive');
  expect(await receive.getByRole('combobox', { name: 'Came on order' }).inputValue()).toBe('T-PO-7');
  const id = await receive.getByRole('textbox', { name: 'Its ID, as marked on it' }).inputValue();
  await receive.getByRole('radio', { name: /^LH/ }).check();
  await receive.getByRole('button', { name: 'Into the crib' }).click();
  await page.getByRole('status').getByRole('link', { name: id }).waitFor();
  await page.goto('/plan/orders');
  await page.getByRole('heading', { level: 1, name: 'Orders' }).waitFor();
  expect(await panel('On order').getByText('T-PO-7').count()).toBe(0);
});

it('closes a job: cancelled needs a reason, and its wear stays', async () => {
  const { page, form } = lead;
  await page.goto('/plan/jobs/T-501');
  await form('Close the job')
    .getByRole('radio', { name: /cancelled/ })
    .check();
  await form('Close the job').getByRole('button', { name: 'Close it' }).click();
  await form('Close the job').getByRole('alert').getByText('Say why it is cancelled.').waitFor();
  expect(
    await form('Close the job')
      .getByRole('radio', { name: /cancelled/ })
      .isChecked(),
  ).toBe(true);
  await form('Close the job').getByRole('textbox', { name: 'Why' }).fill('the mast was lost');
  await form('Close the job').getByRole('button', { name: 'Close it' }).click();
  await page.getByRole('status').getByText('Job T-501 is closed.').waitFor();
  expect(await page.getByRole('link', { name: /line T-501/ }).count()).toBe(0);
});
