import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { launchBrowser, viewports } from '../../support/browser';
import { choose } from '../../support/person';
import { shopAddress } from '../../support/shop-address';

let browser: Browser;
let context: BrowserContext;
let page: Page;
beforeAll(async () => {
  browser = await launchBrowser();
  context = await browser.newContext({
    ...viewports.phone,
    javaScriptEnabled: false,
    baseURL: shopAddress(),
  });
  context.setDefaultTimeout(15_000);
  page = await context.newPage();
});
afterAll(() => browser.close());

it('lets a name be chosen', async () => {
  await page.goto('/who');
  await page.getByRole('button', { name: /^Tech-2\b/ }).click();
  await page.getByRole('link', { name: 'Acting as Tech-2' }).waitFor();
});

it.each(['/', '/tools', '/plan', '/plan/lines/J-094.1', '/plan/orders', '/ledger', '/sizes', '/setup'])(
  'shows %s whole',
  async (address) => {
    await page.goto(address);
    expect(await page.getByRole('heading', { level: 1 }).isVisible()).toBe(true);
    expect(
      await page.getByRole('main').getByRole('table').or(page.getByRole('list')).count(),
    ).toBeGreaterThan(0);
    expect((await page.getByRole('main').textContent())?.length).toBeGreaterThan(200);
  },
);

it('finds a tool', async () => {
  await page.goto('/');
  await page.getByRole('textbox', { name: 'Scan or type a tool ID' }).fill('d-75-o2');
  await page.getByRole('button', { name: 'Find' }).click();
  await page.getByRole('heading', { level: 1, name: 'D-75-02' }).waitFor();
});

it('logs threads once, however often the answer is loaded again', async () => {
  await page.goto('/tools/D-75-02');
  const form = page.getByRole('form', { name: 'Log threads' });
  await form.getByRole('textbox', { name: 'Threads cut' }).fill('3');
  await form.getByRole('button', { name: 'Log it' }).click();
  await page.getByRole('status').getByText('3 ends logged on D-75-02.').waitFor();
  const rows = () =>
    page
      .getByRole('region', { name: 'History' })
      .getByText(/^3 threads/)
      .count();
  const once = await rows();
  expect(once).toBeGreaterThan(0);
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'D-75-02' }).waitFor();
  expect(await rows()).toBe(once);
});

it('shows a refusal beside its field, with what was typed', async () => {
  await page.goto('/tools/D-75-02');
  const form = page.getByRole('form', { name: 'Log threads' });
  await form.getByRole('textbox', { name: 'Threads cut' }).fill('3');
  await form.getByRole('textbox', { name: 'Of these good' }).fill('5');
  await form.getByRole('button', { name: 'Log it' }).click();
  await form.getByRole('alert').waitFor();
  expect(await form.getByRole('textbox', { name: 'Of these good' }).inputValue()).toBe('5');
});

it('issues a tool and takes it back', async () => {
  await page.goto('/tools/D-75-02');
  const issue = page.getByRole('form', { name: 'Issue' });
  await choose(issue.getByRole('combobox', { name: 'To' }), 'Tech-2');
  await issue.getByRole('button', { name: 'Issue it' }).click();
  await page.getByRole('status').getByText('issued to Tech-2').waitFor();
  const back = page.getByRole('form', { name: 'Return' });
  await back.getByRole('radio', { name: /in order/ }).check();
  await back.getByRole('button', { name: 'Take it back' }).click();
  await page.getByRole('status').getByText('came back in order').waitFor();
});

it('receives a tool', async () => {
  await page.goto('/tools/receive');
  await choose(page.getByRole('combobox', { name: 'Part' }), 'brush: Brush');
  await page.getByRole('button', { name: 'Go on' }).click();
  const form = page.getByRole('form', { name: 'Receive' });
  const id = await form.getByRole('textbox', { name: 'Its ID, as marked on it' }).inputValue();
  await form.getByRole('button', { name: 'Into the crib' }).click();
  await page.getByRole('status').getByRole('link', { name: id }).click();
  await page.getByRole('heading', { level: 1, name: id }).waitFor();
});
