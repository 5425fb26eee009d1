import type { Browser, Locator } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { launchBrowser, viewports } from '../../support/browser';
import { choose, sitDown } from '../../support/person';
import { shopAddress } from '../../support/shop-address';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** How many times a thing with a plus is pressed. */
async function times(count: number, press: () => Promise<void>): Promise<void> {
  for (let done = 0; done < count; done++) await press();
}

/** One end with everything in order. */
async function acceptOne(entry: Locator): Promise<void> {
  await choose(entry.getByRole('combobox', { name: 'Turns NOT GO ran on' }), '1');
  await entry.getByText('runs on', { exact: true }).click();
  await entry.getByText('fits', { exact: true }).click();
  await entry.getByText('smooth', { exact: true }).click();
  await entry.getByText('Looked through the bore').click();
  await entry.getByRole('button', { name: 'Record this end' }).click();
  await entry.getByText('1 end accepted.').waitFor();
}

it('accepts three ends at the vise on a phone, sees why a fourth is refused, and takes that back', async () => {
  const tech = await sitDown(browser, {
    address: shopAddress(),
    name: 'Tech-2',
    device: viewports.phone,
  });
  const { page, form } = tech;
  await page.goto('/accept/J-086.1');
  const entry = form('Accept ends');
  const result = entry.getByRole('status', { name: 'Result' });
  const more = entry.getByRole('button', { name: 'Turns NOT GO ran on: more' });
  const look = async () => {
    await entry.getByText('runs on', { exact: true }).tap();
    await entry.getByText('fits', { exact: true }).tap();
    await entry.getByText('smooth', { exact: true }).tap();
    await entry.getByText('Looked through the bore').tap();
  };
  // The gauges issued for the job this morning lie ready.
  expect(await entry.getByRole('textbox', { name: 'GO ring', exact: true }).inputValue()).toBe('G-38-GO-1');
  expect(await entry.getByText('The rule: at most 2 turns').count()).toBe(1);
  await look();
  expect(await result.textContent()).toMatch(/not releasable.*NOT GO ring/);
  // Not used, none, a half, one, one and a half: within the rule.
  await times(4, () => more.tap());
  expect(await result.textContent()).toMatch(/^Accepted(?!, not)/);
  const box = await more.boundingBox();
  // source: published. MIL-STD-1472E: 19 mm for gloved hands, nominally 72 CSS px.
  expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(72);
  await times(2, () => entry.getByRole('button', { name: '+1' }).tap());
  await entry.getByRole('button', { name: 'Record these 3 ends' }).tap();
  await entry.getByText('3 ends accepted.').waitFor();
  await page.getByText('ends 1 to 3').waitFor();

  await look();
  await times(6, () => more.tap());
  expect(await result.textContent()).toMatch(/Refused.*NOT GO ran on 2½ turns/);
  await entry.getByRole('button', { name: 'Record this end' }).tap();
  await entry.getByText('1 end refused: NOT GO runs on too far.').waitFor();
  await entry.getByRole('button', { name: 'Undo' }).tap();
  await entry.getByText('Taken back. Both entries stay in the log.').waitFor();
  expect(await page.getByText('3 of 24').count()).toBe(1);
  expect(tech.faults).toEqual([]);
  await tech.leave();
});

it('a ring that failed its calibration: recall opened, every end decided about, closed', async () => {
  const person = await sitDown(browser, { address: shopAddress(), name: 'Quality-1' });
  const { page, form, panel } = person;
  await page.goto('/accept/J-093.1');
  await acceptOne(form('Accept ends'));
  await page.goto('/gauges/G-100-GO-1');
  await page.getByText('Record a certificate').click();
  const calibration = form('Calibration');
  await calibration.getByRole('radio', { name: /fail/i }).check();
  await calibration.getByRole('button', { name: 'Record the calibration' }).click();
  await page.getByRole('link', { name: 'Review what it accepted' }).click();
  await page.waitForURL(/recalls\/new/);
  const accepted = (await panel('What it accepted').textContent()) ?? '';
  const ends = Number(/(\d+) ends?/.exec(accepted)?.[1]);
  // source: hand. The one end just accepted; the ones before lie before its last calibration, which found it good.
  expect(ends).toBe(1);
  const open = form('Open a recall');
  await open.getByText('too large', { exact: true }).click();
  await open.getByRole('textbox', { name: 'What was found' }).fill('0.04 mm open on the setting plug');
  await open.getByRole('button', { name: 'Set G-100-GO-1 aside and list its ends' }).click();
  await page.waitForURL(/\/recalls\/G-100-GO-1\.R1$/);
  await page.getByText('it may have passed oversize threads').waitFor();
  // source: identity. As many ends are listed as were told beforehand.
  expect(await page.getByRole('definition').filter({ hasText: '1 end' }).count()).toBeGreaterThan(0);
  const decide = form('Decide about ends');
  for (const box of await decide.getByRole('checkbox').all()) await box.check();
  await decide.getByText('cleared by another check', { exact: true }).click();
  await decide.getByRole('textbox', { name: 'On what grounds' }).fill('over wires, all within limits');
  await decide.getByRole('button', { name: 'Write it down' }).click();
  const close = form('Close the recall');
  await close.getByRole('textbox', { name: 'What was concluded' }).fill('ring worn, replaced');
  await close.getByRole('button', { name: 'Close the recall' }).click();
  await page.getByText('Concluded: ring worn, replaced').waitFor();
  await page.goto('/tools/G-100-GO-1');
  await page.getByText('quarantined').first().waitFor();
  expect(person.faults).toEqual([]);
  await person.leave();
});

it('an end accepted with nothing recorded is gauged again now', async () => {
  const tech = await sitDown(browser, {
    address: shopAddress(),
    name: 'Tech-5',
    device: viewports.phone,
  });
  const { page, form } = tech;
  await page.goto('/accept');
  await page.getByRole('region', { name: 'Not releasable' }).getByRole('link').first().tap();
  await page.getByRole('link', { name: 'Gauge again now' }).tap();
  const entry = form('Accept ends');
  await page.getByText('It counts as of now').waitFor();
  await acceptOne(entry);
  expect(await page.getByRole('region', { name: 'Not releasable' }).count()).toBe(0);
  expect(tech.faults).toEqual([]);
  await tech.leave();
});
