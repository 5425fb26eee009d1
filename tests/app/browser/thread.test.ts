import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { launchBrowser, viewports } from '../../support/browser';
import { choose, type Person, sitDown } from '../../support/person';
import { shopAddress } from '../../support/shop-address';

let browser: Browser;
let quality: Person;
beforeAll(async () => {
  browser = await launchBrowser();
});
beforeEach(async () => {
  quality = await sitDown(browser, {
    address: shopAddress(),
    name: 'Quality-1',
    device: viewports.phone,
  });
});
afterEach(async () => {
  expect(quality.faults).toEqual([]);
  await quality.leave();
});
afterAll(() => browser.close());

// source: published, from memory. ASME B1.1 limits of 1-14 UNS 2A: pitch diameter 0.9519 to 0.9463 in.
it('shows the limits of a size, what it is not, and what a blade out of angle does', async () => {
  const { page, panel, form } = quality;
  await page.goto('/sizes/1-medium');
  const thread = panel('The thread');
  const row = thread.getByRole('row', { name: /Pitch diameter/ });
  expect(await row.textContent()).toMatch(/0\.9519.*0\.9463/);
  expect(await thread.textContent()).toMatch(/1-14 UNS is not 1-8 UNC, 1-12 UNF/);
  const cone = panel('The cone');
  expect(await cone.textContent()).toMatch(/Touches\s*at its small end/);
  await form('What an error does').getByRole('textbox', { name: 'Blade wider by' }).fill('1.2');
  await form('What an error does').getByRole('button', { name: 'Show' }).tap();
  await page.waitForURL(/angle=1\.2/);
  await cone.getByRole('definition').filter({ hasText: 'at its large end: the nose stands clear' }).waitFor();
});

// source: formula. E = M + 0.866025P − 3W: 1/4-28 over its best wires, 6.49 mm, is 6.49 − 0.5·√3·25.4/28 = 5.704 mm.
it('catches a measurement in the wrong unit, and takes what was meant at one press', async () => {
  const { page, panel, form } = quality;
  await page.goto('/tools/D-25-09');
  await panel('Looked at').getByText('Last thread over three wires').tap();
  const wires = form('Over three wires');
  await wires.getByRole('textbox', { name: 'Measured over them' }).fill('6.49');
  await wires.getByText('6.49 in is 165 mm: did you mean 6.49 mm?').first().waitFor();
  await choose(wires.getByRole('combobox', { name: 'Unit of measured over them' }), 'mm');
  await wires.getByText(/^Pitch diameter 5\.704 mm\. 0\.031 mm left/).waitFor();
  await choose(wires.getByRole('combobox', { name: 'Unit of measured over them' }), 'in');
  await wires.getByRole('button', { name: 'Write it down' }).tap();
  await wires.getByRole('alert').waitFor();
  await wires.getByRole('button', { name: 'Yes, 6.49 mm' }).tap();
  await page.waitForURL(/done=/);
  const seen = panel('Looked at').getByRole('listitem').first();
  expect(await seen.textContent()).toMatch(/pitch diameter 5\.704 mm, 6\.49 mm over wires/);
  await panel('The thread it cuts').getByText('Pitch diameter of the last thread, D-25-09').first().waitFor();
});
