import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { ImportKind } from '@/lib/import/column';
import { axeViolations, launchBrowser } from '../../support/browser';
import { copyDemo } from '../../support/demo-file';
import { type Person, sitDown } from '../../support/person';
import { type RunningServer, root, startServer } from '../../support/server';

/** The whole main job, told once from an empty shop to a plan without a warning; each test goes on where the last ended. */
let dataDir: string;
let server: RunningServer;
let browser: Browser;
let lead: Person;

beforeAll(async () => {
  dataDir = mkdtempSync(join(tmpdir(), 'edgekeep-first-shop-'));
  copyDemo(dataDir);
  [server, browser] = await Promise.all([startServer({ dataDir, flags: ['--empty'] }), launchBrowser()]);
  lead = await sitDown(browser, { address: server.address });
});
afterAll(async () => {
  await lead?.leave();
  await browser?.close();
  await server?.stop();
  rmSync(dataDir, { recursive: true, force: true });
});

const rowsOf = (kind: ImportKind) => example(kind).trimEnd().split('\n').slice(1);
const example = (kind: ImportKind) => readFileSync(`${root}public/examples/${kind}.csv`, 'utf8');

/** Chooses a file on the Import screen and has it checked. */
async function check(kind: ImportKind, text: string, name = `${kind}.csv`): Promise<void> {
  const { page } = lead;
  await page.goto('/import');
  await page
    .getByLabel('The file')
    .setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text, 'utf8') });
  const radio = page.getByRole('radio', { name: new RegExp(`^${kind}`, 'i') });
  if (!(await radio.isChecked())) await radio.check();
  await page.getByRole('button', { name: 'Check the file' }).click();
  await page.getByRole('button', { name: 'Choose another file' }).waitFor();
}

/** How many entries the log holds; a page shows a hundred. */
async function entries(): Promise<number> {
  const { page } = lead;
  await page.goto('/ledger');
  let seen = 0;
  for (;;) {
    seen += (await page.getByRole('table').getByRole('row').count()) - 1;
    const earlier = page.getByRole('link', { name: 'Earlier entries' });
    if ((await earlier.count()) === 0) return seen;
    await page.goto((await earlier.getAttribute('href')) ?? '');
  }
}

it('opens on three steps, the first of them the set-up', async () => {
  const { page } = lead;
  await page.goto('/');
  expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('An empty shop');
  await page.getByRole('link', { name: 'Set up the shop' }).click();
  await page.getByRole('heading', { level: 1, name: 'A shop of your own' }).waitFor();
});

it('refuses a shop without sizes and keeps what was typed', async () => {
  const { form } = lead;
  const found = form('Found the shop');
  await found.getByRole('textbox', { name: 'The shop’s name' }).fill('Saltmarsh Tube Bench');
  await found.getByRole('textbox', { name: 'Your name or role' }).fill('Lead-9');
  await found.getByRole('button', { name: 'Set up the shop' }).click();
  await found.getByRole('alert').waitFor();
  expect(await found.getByRole('textbox', { name: 'The shop’s name' }).inputValue()).toBe(
    'Saltmarsh Tube Bench',
  );
});

it('is set up with three sizes and a first guess in shop words', async () => {
  const { page, form } = lead;
  const found = form('Found the shop');
  for (const size of [/3 eighths.*medium/, /9 sixteenths.*medium/, /9 sixteenths.*high/])
    await found.getByRole('checkbox', { name: size }).check();
  await found.getByRole('button', { name: 'Set up the shop' }).click();
  await page.getByRole('heading', { level: 1, name: 'Set-up' }).waitFor();
  await page.getByRole('link', { name: 'Acting as Lead-9' }).waitFor();
  const guesses = form('First guesses');
  const row = guesses.locator('div').filter({ hasText: /^A new 9⁄16 threading die/ });
  await row.getByRole('textbox', { name: /About how many threads/ }).fill('150');
  await guesses.getByRole('button', { name: 'Save the guesses' }).click();
  await guesses.getByRole('status').getByText('Saved.').waitFor();
});

it.each(['tools', 'cuts', 'jobs'] as const)('imports the example %s', async (kind) => {
  const { page } = lead;
  const rows = rowsOf(kind).length;
  await check(kind, example(kind));
  await page.getByText(`${rows} rows would be imported.`).waitFor();
  await page.getByRole('button', { name: `Import ${rows} rows` }).click();
  await page.getByRole('status').getByText(`${rows} rows imported from ${kind}.csv.`).waitFor();
  expect(await axeViolations(page)).toEqual([]);
});

it('warns on Today and on the plan of the one size that cannot be made, and of no other', async () => {
  const { page, panel } = lead;
  await page.goto('/');
  expect(await page.getByRole('heading', { level: 1 }).textContent()).toMatch(
    /^9⁄16 in high pressure cannot be made: no (threading )?die/,
  );
  await page.getByText('cannot make now').first().waitFor();
  const [job] = rowsOf('jobs').filter((row) => row.includes('9/16 in,high'));
  await page
    .getByText(String(job?.split(',')[0]))
    .first()
    .waitFor();
  await page.getByRole('navigation').getByRole('link', { name: 'Plan' }).click();
  const cannot = panel('Cannot make now');
  await cannot.waitFor();
  expect(await cannot.getByRole('heading', { level: 3 }).count()).toBe(1);
  expect(await cannot.textContent()).toMatch(/9 sixteenths.*high pressure/);
  expect(await panel('Can make').getByRole('heading', { level: 3 }).count()).toBe(rowsOf('jobs').length - 1);
  await cannot.getByRole('link', { name: /9 sixteenths/ }).click();
  const die = panel('Complete set').getByRole('row', { name: /^Threading die/ });
  expect(await die.textContent()).toContain('missing');
  await die.getByRole('link', { name: 'Receive one now' }).click();
  await page.getByRole('heading', { level: 1, name: 'Receive a tool' }).waitFor();
});

it('refuses the die of the wrong hand, takes the right one, and the warning is gone', async () => {
  const { page, form, panel } = lead;
  const receive = form('Receive');
  expect(await receive.getByRole('textbox', { name: 'Its ID, as marked on it' }).inputValue()).toBe(
    'D-56-04',
  );
  await receive.getByRole('radio', { name: /^RH/ }).check();
  await receive.getByRole('button', { name: 'Into the crib' }).click();
  await receive
    .getByRole('alert')
    .getByText(/Hand mismatch: .*must be LH.*send it back/)
    .waitFor();
  await page.getByRole('alertdialog').getByRole('button', { name: 'Put it back in its box' }).click();
  await receive.getByRole('radio', { name: /^LH/ }).check();
  await receive.getByRole('button', { name: 'Into the crib' }).click();
  await page.getByRole('status').getByRole('link', { name: 'D-56-04' }).waitFor();
  await page.getByRole('navigation').getByRole('link', { name: 'Today' }).click();
  await page.getByRole('heading', { level: 1, name: 'Everything planned can be made' }).waitFor();
  await page.getByRole('navigation').getByRole('link', { name: 'Plan' }).click();
  await panel('Can make').waitFor();
  expect(await panel('Cannot make now').count()).toBe(0);
  expect(await panel('Can make').getByRole('heading', { level: 3 }).count()).toBe(rowsOf('jobs').length);
});

it('takes the same files a second time without a change', async () => {
  const { page } = lead;
  const before = await entries();
  for (const kind of ['tools', 'cuts', 'jobs'] as const) {
    await check(kind, example(kind));
    await page.getByText(`Nothing new: all ${rowsOf(kind).length} rows are there already.`).waitFor();
    expect(await page.getByRole('button', { name: /^Import/ }).count()).toBe(0);
  }
  expect(await entries()).toBe(before);
});

it('imports nothing of a file with one broken row, and names the row', async () => {
  const { page } = lead;
  const before = await entries();
  const [header] = example('tools').split('\n');
  const good = 'D-38-21,die,3/8 in,,LH,K-30,2026-01-05,new,,,,,,';
  const rightHand = 'D-38-22,die,3/8 in,,RH,K-30,2026-01-05,new,,,,,,';
  await check('tools', [header, good, rightHand, ''].join('\n'), 'new-dies.csv');
  await page.getByText('1 error: nothing can be imported until every row is right.').waitFor();
  const error = page.getByRole('table', { name: 'Errors row by row' }).getByRole('row').nth(1);
  // source: hand. A spreadsheet numbers the header as row 1, so the second tool stands in row 3.
  expect(await error.textContent()).toMatch(/row 3, hand.*must be LH, this row says RH/);
  expect(await page.getByRole('button', { name: 'Import' }).isDisabled()).toBe(true);
  expect(await axeViolations(page)).toEqual([]);
  expect(await entries()).toBe(before);
  await page.goto('/find?id=D-38-21');
  await page.getByText('No tool D-38-21').waitFor();
});

it('refuses a file without the columns and a file that is no table', async () => {
  const { page } = lead;
  await page.goto('/import');
  await page.getByRole('radio', { name: /^tools/i }).check();
  const file = page.getByLabel('The file');
  await file.setInputFiles({ name: 'notes.csv', mimeType: 'text/csv', buffer: Buffer.from('a,b\n1,2\n') });
  await page.getByRole('button', { name: 'Check the file' }).click();
  await page.getByRole('main').getByRole('alert').waitFor();
  await page.getByRole('button', { name: 'Choose another file' }).click();
  await page.getByRole('radio', { name: /^tools/i }).check();
  await page.getByLabel('The file').setInputFiles({
    name: 'photo.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from([0xff, 0xd8, 0xff, 0, 1, 2]),
  });
  await page.getByRole('button', { name: 'Check the file' }).click();
  await page.getByRole('main').getByRole('alert').waitFor();
  expect((await page.getByRole('main').getByRole('alert').textContent())?.length).toBeGreaterThan(20);
});

it('told all of it without a fault in the browser', () => {
  expect(lead.faults).toEqual([]);
});
