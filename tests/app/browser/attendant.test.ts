import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { launchBrowser, viewports } from '../../support/browser';
import { choose, type Person, scan, sitDown } from '../../support/person';
import { shopAddress } from '../../support/shop-address';

let browser: Browser;
let crib: Person;
beforeAll(async () => {
  browser = await launchBrowser();
});
beforeEach(async () => {
  crib = await sitDown(browser, { address: shopAddress(), name: 'Crib-1', device: viewports.tablet });
});
afterEach(async () => {
  expect(crib.faults).toEqual([]);
  await crib.leave();
});
afterAll(() => browser.close());

const stands = (page: Page) => page.locator('dl > div').filter({ hasText: 'Stands' }).getByRole('definition');

async function issue(at: Person, to: string, job: RegExp): Promise<void> {
  const form = at.form('Issue');
  await choose(form.getByRole('combobox', { name: 'To' }), to);
  await choose(form.getByRole('combobox', { name: 'For job' }), job);
  await form.getByRole('textbox', { name: 'Bench' }).fill('B2');
  await form.getByRole('button', { name: 'Issue it' }).tap();
}

it('sees stock by size and service, with what is in the crib, issued, away and set aside', async () => {
  const { page, panel } = crib;
  await page.goto('/tools');
  const row = panel('Stock by size and service').getByRole('row', { name: /3 eighths.*medium pressure/ });
  expect(await row.textContent()).toMatch(/\d+ in/);
  expect(await row.textContent()).toMatch(/\d+ issued/);
  expect(await row.textContent()).toMatch(/\d+ set aside/);
  await row.getByRole('link').click();
  await page.waitForURL(/size=3-8-medium/);
  const tools = panel(/^Tools$/);
  await tools.getByRole('link', { name: 'D-38-11' }).waitFor();
  expect(await tools.getByRole('link', { name: 'D-56-14' }).count()).toBe(0);
  for (const [word, id] of [
    ['out for calibration', 'G-25-GO-2'],
    ['out for regrind', 'B-25-03'],
    ['quarantined', 'G-38-NG-2'],
  ] as const) {
    await page.goto(`/tools/${id}`);
    expect(await stands(page).textContent()).toContain(word);
  }
});

it('issues a tool for a job; a second tablet that still shows it in the crib is told who has it', async () => {
  const { page } = crib;
  const other = await sitDown(browser, {
    address: shopAddress(),
    name: 'Crib-2',
    device: viewports.tablet,
  });
  await page.goto('/tools/D-100-01');
  await other.page.goto('/tools/D-100-01');
  await issue(crib, 'Tech-3', /J-093/);
  await page.getByRole('status').getByText('issued to Tech-3').waitFor();
  expect(await stands(page).textContent()).toContain('issued to Tech-3');
  await issue(other, 'Tech-4', /J-093/);
  const refusal = other.form('Issue').getByRole('alert');
  await refusal.waitFor();
  expect(await refusal.textContent()).toBe(
    'D-100-01 is with Tech-3 at bench B2, for J-093.1; it must come back before it can be issued again.',
  );
  expect(other.faults).toEqual([]);
  await other.leave();
});

it('takes it back in order, and another one dull, which is then set aside', async () => {
  const { page, form } = crib;
  await page.goto('/tools/D-100-01');
  await form('Return')
    .getByRole('radio', { name: /in order/ })
    .check();
  await form('Return').getByRole('button', { name: 'Take it back' }).tap();
  await page.getByRole('status').getByText('came back in order').waitFor();
  expect(await stands(page).textContent()).toContain('in the crib');

  await page.goto('/tools/D-25-09');
  await issue(crib, 'Tech-2', /J-089/);
  await page.getByRole('status').getByText('issued to Tech-2').waitFor();
  await form('Return').getByRole('radio', { name: /dull/ }).check();
  await form('Return').getByRole('button', { name: 'Take it back' }).tap();
  await page.getByRole('status').getByText('came back dull').waitFor();
  expect(await stands(page).textContent()).toContain('quarantined');
  await page.getByRole('status').getByRole('button', { name: 'Undo' }).tap();
  await expect.poll(() => stands(page).textContent()).toContain('issued to Tech-2');
  await form('Return')
    .getByRole('radio', { name: /in order/ })
    .check();
  await form('Return').getByRole('button', { name: 'Take it back' }).tap();
  await page.getByRole('status').getByText('came back in order').waitFor();
});

it('scans one tool after another, each time from wherever the last one led', async () => {
  const { page } = crib;
  await page.goto('/');
  for (const id of ['G-56-GO-1', 'b-56h-05', 'BDY-D']) {
    await scan(crib, id);
    await page.getByRole('heading', { level: 1, name: id.toUpperCase() }).waitFor();
  }
});

it('receives a tool under the ID that is suggested, and refuses one that reads like another', async () => {
  const { page, form } = crib;
  await page.goto('/tools/receive');
  await choose(page.getByRole('combobox', { name: 'Part' }), 'deburring tool: Deburring tool');
  await page.getByRole('button', { name: 'Go on' }).tap();
  const id = form('Receive').getByRole('textbox', { name: 'Its ID, as marked on it' });
  await id.waitFor();
  const suggested = await id.inputValue();
  expect(suggested).toMatch(/^DBR-\d+$/);
  await id.fill('dbr-i');
  await form('Receive').getByRole('button', { name: 'Into the crib' }).tap();
  const refusal = form('Receive').getByRole('alert');
  await refusal.waitFor();
  expect(await refusal.textContent()).toBe(
    'DBR-I reads like DBR-1 (O and 0, I and 1 count as one). Choose another ID.',
  );
  expect(await id.inputValue()).toBe('dbr-i');
  await id.fill(suggested);
  await form('Receive').getByRole('button', { name: 'Into the crib' }).tap();
  await page.getByRole('status').getByRole('link', { name: suggested }).click();
  await page.getByRole('heading', { level: 1, name: suggested }).waitFor();
  expect(await stands(page).textContent()).toContain('in the crib');
});

it('sends a right-hand die back at the box', async () => {
  const { page, form } = crib;
  await page.goto('/tools/receive');
  await choose(page.getByRole('combobox', { name: 'Part' }), /threading die: 9⁄16/);
  await page.getByRole('button', { name: 'Go on' }).tap();
  const receive = form('Receive');
  const id = await receive.getByRole('textbox', { name: 'Its ID, as marked on it' }).inputValue();
  await receive.getByRole('radio', { name: /^RH/ }).check();
  await receive.getByRole('button', { name: 'Into the crib' }).tap();
  await receive.getByRole('alert').waitFor();
  expect(await receive.getByRole('alert').textContent()).toMatch(
    /^Hand mismatch: .* must be LH.*send it back/,
  );
  await scan(crib, id);
  await page.getByText(`No tool ${id}`).waitFor();
});
