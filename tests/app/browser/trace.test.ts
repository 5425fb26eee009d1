import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { axeViolations, launchBrowser, viewports } from '../../support/browser';
import { sitDown } from '../../support/person';
import { shopAddress } from '../../support/shop-address';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const ANSWER_WITHIN_MS = 90_000;

function pagesOf(pdf: Buffer): number {
  return [...pdf.toString('latin1').matchAll(/\/Type\s*\/Page[^s]/g)].length;
}

// source: hand. The auditor’s question, asked once in the find box, answered on one sheet.
it('Q31: end 2 of spool S-18: one search, under ninety seconds, one page of A4', async () => {
  const person = await sitDown(browser, {
    address: shopAddress(),
    name: 'Quality-1',
    device: viewports.desktop,
  });
  const { page, panel } = person;
  const askedAtMs = Date.now();
  await page.getByRole('textbox', { name: 'Scan or type a tool ID' }).fill('s-18 end 2');
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name: 'S-18 end 2' }).waitFor();
  expect(Date.now() - askedAtMs).toBeLessThan(ANSWER_WITHIN_MS);
  const work = panel('Who, when, with what');
  expect(await work.getByRole('row', { name: /^Threaded/ }).textContent()).toMatch(
    /Tech-\d.*D-25-0\d.*turns cut by then/,
  );
  expect(await work.getByRole('row', { name: /^Coned/ }).textContent()).toMatch(/B-25H-\d\d/);
  expect(await work.getByRole('row', { name: /^Gauged/ }).textContent()).toMatch(/Tech-\d.*accepted/);
  const gauges = panel('Gauged with');
  for (const role of ['GO ring', 'NOT GO ring', 'cone gauge'])
    expect(await gauges.getByRole('row', { name: new RegExp(`, ${role}`) }).textContent()).toMatch(/PM-/);
  await panel('What the record does not say').waitFor();
  expect(await axeViolations(page)).toEqual([]);
  expect(pagesOf(await page.pdf({ format: 'A4' }))).toBe(1);
  expect(person.faults).toEqual([]);
  await person.leave();
});

// source: hand. A die adjusted twice: its whole life, on one sheet.
it('Q30: the history card of a die that was adjusted prints on one page', async () => {
  const person = await sitDown(browser, { address: shopAddress(), name: 'Lead-1' });
  const { page, panel } = person;
  await page.goto('/tools/D-25-07/card');
  expect(await panel('Edges').textContent()).toMatch(/closed a touch.*closed a touch/);
  expect(await axeViolations(page)).toEqual([]);
  expect(pagesOf(await page.pdf({ format: 'A4' }))).toBe(1);
  expect(person.faults).toEqual([]);
  await person.leave();
});
