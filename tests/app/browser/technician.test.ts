import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { launchBrowser, viewports } from '../../support/browser';
import { choose, type Person, sitDown } from '../../support/person';
import { shopAddress } from '../../support/shop-address';

let browser: Browser;
let tech: Person;
beforeAll(async () => {
  browser = await launchBrowser();
});
beforeEach(async () => {
  tech = await sitDown(browser, { address: shopAddress(), name: 'Tech-1', device: viewports.phone });
});
afterEach(async () => {
  expect(tech.faults).toEqual([]);
  await tech.leave();
});
afterAll(() => browser.close());

/** What the head of a tool's page says that its edge has cut. */
async function cutSoFar(page: Page): Promise<{ ends: number; turns: number }> {
  const said =
    (await page
      .getByRole('definition')
      .filter({ hasText: /\d turns/ })
      .textContent()) ?? '';
  const [, ends, turns] = /(\d+) ends, ([\d\s\u00a0\u202f,]+) turns/.exec(said) ?? [];
  return { ends: Number(ends), turns: Number(turns?.replace(/\D/g, '')) };
}

async function find(typed: string): Promise<void> {
  const { page } = tech;
  await page.goto('/');
  await page.getByRole('textbox', { name: 'Scan or type a tool ID' }).fill(typed);
  await page.getByRole('button', { name: 'Find' }).tap();
  await page.waitForURL(/\/tools/);
}

async function log(ends: number): Promise<void> {
  const form = tech.form('Log threads');
  await form.getByRole('textbox', { name: 'Threads cut' }).fill(String(ends));
  await form.getByRole('button', { name: 'Log it' }).tap();
}

it.each([
  ['as it is marked', 'D-56-14'],
  ['in lower case', 'd-56-14'],
  ['with spaces for the dashes', ' d 56 14 '],
])('finds a tool by its ID %s', async (_how, typed) => {
  await find(typed);
  expect(await tech.page.getByRole('heading', { level: 1 }).textContent()).toBe('D-56-14');
});

it('finds a tool whose 0 was typed as the letter O, and says so where nothing reads like what was typed', async () => {
  const { page } = tech;
  await find('d-10o-o1');
  expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('D-100-01');
  await find('D-56-77');
  await page.getByText('No tool D-56-77').waitFor();
  expect(await page.getByRole('link', { name: 'Receive a tool' }).count()).toBeGreaterThan(0);
});

it('reads what a die has left with its reason, and less for a harder material', async () => {
  const { page, panel } = tech;
  await page.goto('/tools/D-56-14?connection=9-16-medium&ends=20');
  const left = panel('What it has left');
  const likely = async () => Number(/(\d+) likely/.exec((await left.textContent()) ?? '')?.[1]);
  const usual = await likely();
  expect(usual).toBeGreaterThan(20);
  expect(await left.textContent()).toMatch(/\d+ ends safe/);
  expect(await left.textContent()).toMatch(/needs 20: .*that it finishes, 90\s%\sis asked for/);
  expect(await left.textContent()).toMatch(/worn out|first guess/);
  const other = panel('For other work');
  await choose(other.getByRole('combobox', { name: 'Material' }), /2507/);
  await other.getByRole('textbox', { name: 'Ends' }).fill('20');
  await other.getByRole('button', { name: 'Show' }).last().tap();
  await page.waitForURL(/material=/);
  await left.getByText('2507').first().waitFor();
  const hard = await likely();
  expect(hard).toBeGreaterThanOrEqual(0);
  expect(hard).toBeLessThan(usual);
});

it('logs threads with rejects and a length in mm, and takes it back within ten seconds', async () => {
  const { page, form, panel } = tech;
  await page.goto('/tools/D-56-14?connection=9-16-medium');
  const before = await cutSoFar(page);
  const entry = form('Log threads');
  await entry.getByRole('textbox', { name: 'Threads cut' }).fill('20');
  await entry.getByRole('textbox', { name: 'Of these good' }).fill('18');
  await entry.getByText('Rejects, thread length, fluid, heat and more').tap();
  await entry.getByRole('textbox', { name: 'Thread length' }).fill('11.5');
  await choose(entry.getByRole('combobox', { name: 'Unit of thread length' }), 'mm');
  await entry.getByRole('textbox', { name: 'torn or rough thread' }).fill('2');
  await entry.getByRole('button', { name: 'Log it' }).tap();
  await entry.getByRole('status').getByText('20 ends logged on D-56-14.').waitFor();
  const after = await cutSoFar(page);
  expect(after.ends - before.ends).toBe(20);
  // source: formula. Turns = ends × length × threads per inch ÷ 25.4 = 20 × 11.5 × 18 ÷ 25.4 = 163, both totals shown rounded.
  expect(Math.abs(after.turns - before.turns - (20 * 11.5 * 18) / 25.4)).toBeLessThanOrEqual(1);
  expect(await panel('History').getByRole('row').nth(1).textContent()).toMatch(/20 threads, .*2 not good/);
  await entry.getByRole('button', { name: 'Undo' }).tap();
  await entry.getByText('Taken back. Both entries stay in the log.').waitFor();
  await expect.poll(() => cutSoFar(page)).toEqual(before);
  await panel('History').getByText('taken back').first().waitFor();
});

it('offers Undo for ten seconds and no longer', async () => {
  const { page, form } = tech;
  await page.clock.install();
  await page.goto('/tools/D-56-14?connection=9-16-medium');
  await log(1);
  const undo = form('Log threads').getByRole('button', { name: 'Undo' });
  await undo.waitFor();
  await page.clock.runFor(9_000);
  expect(await undo.isVisible()).toBe(true);
  await page.clock.runFor(1_500);
  await undo.waitFor({ state: 'detached' });
  await form('Log threads').getByText('1 end logged on D-56-14.').waitFor();
});

it('refuses a length with the wrong unit and keeps what was typed', async () => {
  const { page, form } = tech;
  await page.goto('/tools/D-56-14?connection=9-16-medium');
  const before = await cutSoFar(page);
  const entry = form('Log threads');
  await entry.getByRole('textbox', { name: 'Threads cut' }).fill('7');
  await entry.getByText('Rejects, thread length, fluid, heat and more').tap();
  await entry.getByRole('textbox', { name: 'Heat' }).fill('L4407');
  const length = entry.getByRole('textbox', { name: 'Thread length' });
  await length.fill('9.5');
  await choose(entry.getByRole('combobox', { name: 'Unit of thread length' }), 'in');
  await entry.getByRole('button', { name: 'Log it' }).tap();
  const refusal = entry.getByRole('alert');
  await refusal.waitFor();
  // source: hand. 9.5 × 25.4 = 241.3; the table's 9/16 medium thread is 1/2 in = 12.7 mm long.
  expect(await refusal.textContent()).toBe('9.5 in is 241 mm: did you mean 9.5 mm?');
  expect(await length.getAttribute('aria-invalid')).toBe('true');
  expect(await length.isVisible()).toBe(true);
  expect(await length.inputValue()).toBe('9.5');
  expect(await entry.getByRole('textbox', { name: 'Threads cut' }).inputValue()).toBe('7');
  expect(await entry.getByRole('textbox', { name: 'Heat' }).inputValue()).toBe('L4407');
  expect(await cutSoFar(page)).toEqual(before);
});

it('mends 40 ends logged on the wrong die: both lives corrected, both entries visible', async () => {
  const { page, panel } = tech;
  const lives = async () => {
    const read = async (id: string) => {
      await page.goto(`/tools/${id}?connection=9-16-medium`);
      return cutSoFar(page);
    };
    return { right: await read('D-56-14'), wrong: await read('D-56-90') };
  };
  const before = await lives();
  await log(40);
  await page.getByText('40 ends logged on D-56-90.').waitFor();
  const logged = panel('History').getByRole('row').nth(1);
  await logged.getByText('Wrong tool?').tap();
  await logged.getByRole('textbox', { name: 'It was really cut with' }).fill('d-56-14');
  await logged.getByRole('textbox', { name: 'Why' }).fill('read the wrong label');
  await logged.getByRole('button', { name: 'Mend it' }).tap();
  const history = panel('History');
  await page
    .getByRole('status')
    .getByText(/D-56-14: 40 threads.*both tools’ lives are corrected/)
    .waitFor();
  await history.getByText('taken back').first().waitFor();
  expect(await history.locator('s').first().textContent()).toMatch(/^40 threads/);
  const after = await lives();
  expect(after.wrong).toEqual(before.wrong);
  // source: hand. 40 medium-pressure 9/16 ends at 1/2 in × 18 threads per inch = 9 turns each, 360 turns.
  expect(after.right).toEqual({ ends: before.right.ends + 40, turns: before.right.turns + 360 });
  await page.goto('/tools/D-56-14');
  expect(await history.getByRole('row').nth(1).textContent()).toMatch(
    /40 threads.*moved here from another tool/,
  );
});
