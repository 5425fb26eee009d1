import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { axeViolations, launchBrowser, viewports, watchedPage } from '../../support/browser';
import { shopAddress } from '../../support/shop-address';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const sizes = Object.entries(viewports);

it.each(sizes)('the first page loads without a fault and is accessible on a %s', async (_name, size) => {
  const context = await browser.newContext(size);
  const { page, faults } = await watchedPage(context);
  await page.goto(shopAddress(), { waitUntil: 'networkidle' });
  expect(await page.getByRole('heading', { level: 1 }).count()).toBe(1);
  expect(await axeViolations(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth)).toBe(true);
  expect(faults).toEqual([]);
  await context.close();
});

it('scripts run only with the nonce of their own answer, and nothing comes from other hosts', async () => {
  const [one, two] = await Promise.all([fetch(shopAddress()), fetch(shopAddress())]);
  const policies = [one, two].map((answer) => answer.headers.get('content-security-policy') ?? '');
  const nonces = policies.map(
    (policy) => /script-src 'self' 'nonce-([^']+)' 'strict-dynamic';/.exec(policy)?.[1],
  );
  expect(nonces[0]).toBeTruthy();
  expect(nonces[0]).not.toBe(nonces[1]);
  for (const part of [
    "frame-ancestors 'none'",
    "object-src 'none'",
    "base-uri 'self'",
    "form-action 'self'",
  ]) {
    expect(policies[0]).toContain(part);
  }
  const html = await one.text();
  const scripts = html.match(/<script\b[^>]*>/g) ?? [];
  expect(scripts.length).toBeGreaterThan(0);
  expect(scripts.filter((tag) => !tag.includes(`nonce="${nonces[0]}"`))).toEqual([]);
  expect(one.headers.get('x-content-type-options')).toBe('nosniff');
  expect(one.headers.get('x-powered-by')).toBeNull();
});

it.each([
  ['is not run', false],
  ['would run without the policy, so the check can fail', true],
])('a planted script %s', async (_name, bypassCSP) => {
  const context = await browser.newContext({ ...viewports.desktop, bypassCSP });
  const page = await context.newPage();
  await page.goto(shopAddress());
  await page.evaluate(() => {
    document.body.setAttribute('onclick', 'window.planted = true');
    document.body.click();
  });
  expect(await page.evaluate(() => 'planted' in window)).toBe(bypassCSP);
  await context.close();
});

it('an address that leads nowhere gives a page of its own, without script faults', async () => {
  const context = await browser.newContext(viewports.desktop);
  const { page, faults } = await watchedPage(context);
  const answer = await page.goto(`${shopAddress()}/nowhere/at/all`, { waitUntil: 'networkidle' });
  expect(answer?.status()).toBe(404);
  expect(faults.filter((fault) => !fault.includes('404'))).toEqual([]);
  await context.close();
});
