import { request } from 'node:http';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { addDays } from '@/lib/calendar';
import { launchBrowser, viewports } from '../../support/browser';
import { choose, type Person, sitDown } from '../../support/person';
import { shopAddress } from '../../support/shop-address';

let browser: Browser;
let person: Person;
beforeAll(async () => {
  browser = await launchBrowser();
  person = await sitDown(browser, { address: shopAddress(), name: 'Quality-1' });
});
afterAll(() => browser.close());

/** The fields of a form as a browser without scripts would send them, with who is acting. */
async function fieldsOf(address: string, label: string, filled: Record<string, string>) {
  const context = await browser.newContext({
    ...viewports.desktop,
    javaScriptEnabled: false,
    baseURL: shopAddress(),
  });
  const page = await context.newPage();
  await page.goto('/who');
  await page.getByRole('button', { name: /^Tech-5\b/ }).click();
  await page.goto(address);
  const form = page.getByRole('form', { name: label });
  const empty = await form.evaluate((node) => [...new FormData(node as HTMLFormElement)]);
  const fields = empty.map(([name, value]) => [name, filled[name] ?? value]);
  const cookies = (await context.cookies()).map(({ name, value }) => `${name}=${value}`).join('; ');
  await context.close();
  return { fields: fields as [string, string][], cookies };
}

function post(address: string, fields: readonly [string, string][], headers: Record<string, string>) {
  const body = new FormData();
  for (const [name, value] of fields) body.append(name, value);
  return fetch(`${shopAddress()}${address}`, { method: 'POST', body, headers, redirect: 'manual' });
}

async function history(page: Page, id: string): Promise<string> {
  await page.goto(`/tools/${id}`);
  return (await page.getByRole('region', { name: 'History' }).textContent()) ?? '';
}

it('refuses an entry that another site sends for the person, and takes the same one from this house', async () => {
  const { fields, cookies } = await fieldsOf('/tools/B-75-04', 'Log cones', { ends: '2', heat: 'FOREIGN-1' });
  const foreign = await post('/tools/B-75-04', fields, {
    cookie: cookies,
    origin: 'http://elsewhere.example',
  });
  expect(foreign.status).toBeGreaterThanOrEqual(400);
  expect(await history(person.page, 'B-75-04')).not.toContain('FOREIGN-1');
  const own = await post('/tools/B-75-04', fields, { cookie: cookies, origin: shopAddress() });
  expect(own.status).toBeLessThan(400);
  expect(await history(person.page, 'B-75-04')).toContain('FOREIGN-1');
});

it('asks who is acting before anything is written', async () => {
  const { fields } = await fieldsOf('/tools/B-75-04', 'Log cones', { ends: '2', heat: 'NOBODY-1' });
  const answer = await post('/tools/B-75-04', fields, { origin: shopAddress() });
  expect(await answer.text()).toMatch(/name/);
  expect(await history(person.page, 'B-75-04')).not.toContain('NOBODY-1');
});

const script = '<img src=x onerror="window.planted=1">';

/** What was typed is on the page as text, and made no element and ran nothing. */
async function isText(page: Page, typed: string): Promise<void> {
  await page.getByText(typed).filter({ visible: true }).first().waitFor();
  expect(await page.locator('img[src="x"]').count()).toBe(0);
  expect(await page.evaluate(() => 'planted' in window)).toBe(false);
}

it('shows script in a person’s name as text, everywhere the name stands', async () => {
  const { page, form } = person;
  await page.goto('/setup');
  await form('Add a person').getByRole('textbox', { name: 'Name or role' }).fill(script);
  await form('Add a person').getByRole('button', { name: 'Add' }).click();
  await form('Add a person').getByRole('status').waitFor();
  for (const address of ['/setup', '/who', '/ledger', '/tools/B-75-04']) {
    await page.goto(address);
    if (address === '/tools/B-75-04')
      expect(await page.getByRole('option', { name: script }).count()).toBeGreaterThan(0);
    else await isText(page, script);
  }
});

it('shows script in a note, a heat, a bench and a lot as text', async () => {
  const { page, form, panel } = person;
  await page.goto('/tools/B-75-04');
  await form('Log cones').getByRole('textbox', { name: 'Cones cut' }).fill('1');
  await form('Log cones').getByText('Rejects, thread length, fluid, heat and more').click();
  await form('Log cones').getByRole('textbox', { name: 'Heat' }).fill(script);
  await form('Log cones').getByRole('button', { name: 'Log it' }).click();
  await form('Log cones').getByRole('status').waitFor();
  await isText(page, script);
  await choose(form('Issue').getByRole('combobox', { name: 'To' }), 'Tech-5');
  await form('Issue').getByRole('textbox', { name: 'Bench' }).fill('<b>B1</b>');
  await form('Issue').getByRole('button', { name: 'Issue it' }).click();
  await panel('History').getByText('bench <b>B1</b>').waitFor();
  await form('Return')
    .getByRole('radio', { name: /in order/ })
    .check();
  await form('Return').getByRole('button', { name: 'Take it back' }).click();
  await page.getByRole('status').getByText('came back').waitFor();
  await panel('Custody').getByText('Move it elsewhere').click();
  await choose(form('Move').getByRole('combobox', { name: 'Where to' }), /quarantine/);
  await form('Move').getByRole('textbox', { name: 'Why' }).fill(script);
  await form('Move').getByRole('button', { name: 'Move it' }).click();
  await page.getByRole('status').first().waitFor();
  await isText(page, script);
  await page.goto('/tools/receive?part=brush');
  await form('Receive').getByRole('textbox', { name: 'Lot' }).fill(script);
  await form('Receive').getByRole('button', { name: 'Into the crib' }).click();
  await page.getByRole('status').first().waitFor();
  await isText(page, script);
});

it('shows script in a job’s title as text, on the plan, its own page and Today', async () => {
  const { page, panel } = person;
  await page.goto('/plan/jobs/new');
  const today = await page.getByLabel('Start').first().inputValue();
  await page.getByRole('textbox', { name: 'Job number' }).fill('T-666');
  await page.getByRole('textbox', { name: 'What it is' }).fill(script);
  await choose(panel('Line 1').getByRole('combobox', { name: 'Size and service' }), /^3⁄4 medium/);
  await choose(panel('Line 1').getByRole('combobox', { name: 'Material' }), '316 cold-worked');
  await panel('Line 1').getByRole('textbox', { name: 'Ends' }).fill('2');
  await panel('Line 1').getByLabel('Due').fill(addDays(today, 1));
  await page.getByRole('button', { name: 'Put it on the plan' }).click();
  await page.getByRole('status').getByText('Job T-666 is on the plan.').waitFor();
  for (const address of ['/plan', '/plan/jobs/T-666', '/plan/lines/T-666.1', '/']) {
    await page.goto(address);
    await isText(page, script);
  }
});

it.each([
  ['a long ID', `/tools/${'D'.repeat(3000)}`],
  ['an unknown tool', '/tools/D-99-99'],
  ['an unknown job', '/plan/jobs/nothing'],
  ['an unknown line', '/plan/lines/nothing.1'],
  ['an unknown size', '/sizes/7-8-medium'],
  ['a name that every object has', '/tools/__proto__'],
])('answers %s with a page that leads on', async (_name, address) => {
  const { page } = person;
  const answer = await page.goto(address);
  expect(answer?.status()).toBe(404);
  await page.getByRole('heading', { level: 1, name: 'Nothing is kept under this address' }).waitFor();
  await page.getByRole('main').getByRole('link', { name: 'All tools' }).click();
  await page.getByRole('heading', { level: 1, name: 'Tools' }).waitFor();
});

it('finds nothing under a very long ID and says so shortly', async () => {
  const { page } = person;
  await page.goto(`/find?id=${'D-'.repeat(2000)}`);
  await page.getByText(/^No tool D-D/).waitFor();
  expect(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth)).toBe(true);
});

it('refuses an ID that cannot be marked even when the field lets it through', async () => {
  const { page, form } = person;
  await page.goto('/tools/receive?part=brush');
  const id = form('Receive').getByRole('textbox', { name: 'Its ID, as marked on it' });
  await id.evaluate((field) => field.removeAttribute('maxlength'));
  await id.fill('X'.repeat(400));
  await form('Receive').getByRole('button', { name: 'Into the crib' }).click();
  await form('Receive').getByRole('alert').waitFor();
});

/** The status of a path sent exactly as written, which no browser would. */
function rawStatus(path: string): Promise<number> {
  const { hostname, port } = new URL(shopAddress());
  return new Promise((resolve, reject) => {
    request({ hostname, port, path }, (answer) => {
      answer.resume();
      resolve(answer.statusCode ?? 0);
    })
      .on('error', reject)
      .end();
  });
}

it.each([
  '/tools/%00',
  '/tools/..%2f..%2fetc%2fpasswd',
  '/tools/../../etc/passwd',
  '/tools/%E0%A4%A',
  '/tools/%25',
  '/plan/jobs/%00',
  '/plan/lines/%25%25',
  '/sizes/%00',
  '/export/..%2f..%2fpackage.json',
  '/import/empty/..%2f..%2fpackage.json',
  '/_next/..%2f..%2fpackage.json',
])('answers %s as not found or not understood, never as its own fault', async (path) => {
  const status = await rawStatus(path);
  expect(status).toBeGreaterThanOrEqual(300);
  expect(status).toBeLessThan(500);
});

it.each([
  '/find',
  '/find?id=',
  '/tools?page=-1',
  '/tools?page=1e99',
  '/ledger?before=0',
  '/plan/orders/new?part=__proto__',
  '/tools/D-56-14?line=nothing&ends=-5',
  '/tools?size=constructor&kind=__proto__',
])('serves %s all the same', async (path) => {
  const answer = await fetch(`${shopAddress()}${path}`);
  expect(answer.status).toBe(200);
});
