import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { launchBrowser, viewports } from '../../support/browser';
import { choose, type Person, sitDown } from '../../support/person';
import { readCodes } from '../../support/read-code';
import { shopAddress } from '../../support/shop-address';

let browser: Browser;
let crib: Person;
beforeAll(async () => {
  browser = await launchBrowser();
});
beforeEach(async () => {
  const device = { ...viewports.desktop, deviceScaleFactor: 3 };
  crib = await sitDown(browser, { address: shopAddress(), name: 'Crib-1', device });
});
afterEach(async () => {
  expect(crib.faults).toEqual([]);
  await crib.leave();
});
afterAll(() => browser.close());

/** Sizes of the pages that come out of the printer, mm; the printer counts in 96ths of an inch. */
async function printedPages(): Promise<number[][]> {
  const pdf = (await crib.page.pdf({ preferCSSPageSize: true })).toString('latin1');
  return [...pdf.matchAll(/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)/g)].map(([, width, height]) =>
    [Number(width), Number(height)].map((points) => (points * 25.4) / 72),
  );
}

// source: other-software. An independent reader of the three codes reads the labels off the screen.
it('prints die tags one to a page, and what is printed reads back', async () => {
  const { page, form } = crib;
  await page.goto('/labels');
  // A hand scanner types the ID and then Enter, which begins a new line.
  const tools = form('Labels').getByRole('textbox', { name: 'Tools' });
  await tools.pressSequentially('D-38-11\nd 56 14\nNO-1');
  await form('Labels').getByRole('button', { name: 'Show the labels' }).click();
  await page.getByText('Not in the record: NO-1.').waitFor();
  const labels = page.getByRole('img', { name: /^Page \d of labels/ });
  expect(await labels.count()).toBe(2);
  const read = [];
  for (const label of await labels.all()) read.push(...(await readCodes(await label.screenshot())));
  expect(read).toEqual([
    { format: 'DataMatrix', text: 'D-38-11' },
    { format: 'DataMatrix', text: 'D-56-14' },
  ]);
  const pages = await printedPages();
  expect(pages).toHaveLength(2);
  for (const [width, height] of pages) {
    expect(Math.abs((width ?? 0) - 25)).toBeLessThan(0.27);
    expect(Math.abs((height ?? 0) - 10)).toBeLessThan(0.27);
  }
});

// source: published. ISO 216: A4 is 210 × 297 mm.
it('prints a sheet that was begun, QR codes and all', async () => {
  const { page } = crib;
  await page.goto('/labels?ids=D-38-11%0AG-56-GO-1&stock=a4-3x8&code=qr&first=24');
  const pages = await printedPages();
  expect(pages).toHaveLength(2);
  for (const [width, height] of pages) {
    expect(Math.abs((width ?? 0) - 210)).toBeLessThan(0.27);
    expect(Math.abs((height ?? 0) - 297)).toBeLessThan(0.27);
  }
  const labels = page.getByRole('img', { name: /^Page \d of labels/ });
  expect((await readCodes(await labels.first().screenshot())).map(({ text }) => text)).toEqual(['D-38-11']);
});

// source: hand. A mark that reads as another tool is on the wrong one.
it('marks a tool again, and will not take a mark that reads as another', async () => {
  const { page, panel, form } = crib;
  await page.goto('/tools/D-56-14');
  await panel('Its mark').getByText('Marked again').click();
  const mark = form('Marked again');
  await choose(mark.getByRole('combobox', { name: 'How' }), 'etched');
  const readAs = mark.getByRole('textbox', { name: /The new mark/ });
  await readAs.fill('D-56-90');
  await mark.getByRole('button', { name: 'Write it down' }).click();
  await mark.getByRole('alert').getByText('The mark reads D-56-90, and this is D-56-14.').waitFor();
  await readAs.fill('d-56-14');
  await mark.getByRole('button', { name: 'Write it down' }).click();
  await page.waitForURL(/done=/);
  await panel('History').getByText('marked again: etched, Data Matrix, read back').first().waitFor();
});
