import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { axeViolations, launchBrowser, viewports } from '../../support/browser';
import { cameraFilm } from '../../support/fake-camera';
import { type Person, sitDown } from '../../support/person';
import { shopAddress } from '../../support/shop-address';

let dir: string;
let browser: Browser;
let tech: Person;
beforeAll(async () => {
  dir = mkdtempSync(join(tmpdir(), 'edgekeep-film-'));
  const film = join(dir, 'label.y4m');
  writeFileSync(film, cameraFilm('data-matrix', 'D-38-11'));
  browser = await launchBrowser([
    '--use-fake-ui-for-media-stream',
    '--use-fake-device-for-media-stream',
    `--use-file-for-fake-video-capture=${film}`,
  ]);
});
beforeEach(async () => {
  tech = await sitDown(browser, { address: shopAddress(), name: 'Tech-1', device: viewports.phone });
});
afterEach(() => tech.leave());
afterAll(async () => {
  await browser.close();
  rmSync(dir, { recursive: true, force: true });
});

// source: identity. The tool whose printed code is held before the camera is the one whose page opens.
it('reads a label before the camera at the counter, under the policy of the pages', async () => {
  const { page } = tech;
  await page.goto('/crib');
  await page.getByRole('button', { name: 'Use the camera' }).click();
  await page.waitForURL((url) => /^\/(tools\/D-38-11|crib\/kits\/)/.test(url.pathname));
  await page.getByText('D-38-11').first().waitFor();
  expect(tech.faults).toEqual([]);
});

// source: identity. As above, with the network cut: the parts of the reader are kept on the device beside the bench.
it('reads it at the bench where there is no network', async () => {
  const { page } = tech;
  await page.goto('/bench');
  await page.waitForFunction(() => navigator.serviceWorker?.controller !== null);
  await page.waitForFunction(async () => {
    const kept = await caches.keys();
    const found = await Promise.all(
      kept.map(async (name) => (await (await caches.open(name)).keys()).map(({ url }) => url)),
    );
    return found.flat().some((url) => url.endsWith('/reader.wasm'));
  });
  await page.context().setOffline(true);
  await page.getByRole('button', { name: 'Camera', exact: true }).click();
  // Either the work that the tool is out for, or the word that it is out for none.
  await page.getByText('D-38-11').filter({ visible: true }).first().waitFor();
  await page.context().setOffline(false);
});

it('can be stopped, and is accessible while it is open', async () => {
  const { page } = tech;
  await page.goto('/accept');
  await page.locator('a[href^="/accept/"]').first().click();
  const open = page.getByRole('button', { name: /^Camera for the/ });
  const gauge = page.locator('input[name^="gauge-"]').first();
  await gauge.fill('');
  await open.first().click();
  await expect.poll(() => gauge.inputValue()).toBe('D-38-11');
  // A second look at the same page, ended by hand before it reads anything.
  await page.goto('/crib');
  await page.getByRole('button', { name: 'Use the camera' }).click();
  expect(await axeViolations(page)).toEqual([]);
});

it('says what to do where the browser lends no camera', async () => {
  const { page } = tech;
  // A browser on plain http under an address of the network has no mediaDevices at all.
  await page.addInitScript(() => Object.defineProperty(navigator, 'mediaDevices', { value: undefined }));
  await page.goto('/crib');
  await page.getByRole('button', { name: 'Use the camera' }).click();
  const alert = page.getByRole('alert').filter({ hasText: 'only to an https address' });
  await alert.getByRole('link', { name: 'How to open that address' }).click();
  await page.getByRole('heading', { name: 'Tablets', level: 1 }).waitFor();
  expect(await axeViolations(page)).toEqual([]);
});
