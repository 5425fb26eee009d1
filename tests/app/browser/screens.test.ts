import { readdirSync } from 'node:fs';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ROOMS } from '@/app/rooms/_parts/rooms';
import { axeViolations, launchBrowser, viewports, watchedPage } from '../../support/browser';
import { root } from '../../support/server';
import { shopAddress } from '../../support/shop-address';

/** Every screen of the demo shop, under the route it belongs to; more than one address where a screen has several faces. */
const screens: Readonly<Record<string, readonly string[]>> = {
  '/': ['/'],
  '/tools': ['/tools', '/tools?state=all&page=2', '/tools?find=D-56-77'],
  '/tools/[id]': [
    '/tools/D-56-14',
    '/tools/D-25-09',
    '/tools/G-25-GO-1',
    '/tools/F-L07',
    '/tools/D-38-01',
    '/tools/CG-38-1',
  ],
  '/tools/[id]/card': ['/tools/D-56-14/card'],
  '/trace': ['/trace', '/trace?q=J-017'],
  '/trust': ['/trust'],
  '/tools/receive': ['/tools/receive', '/tools/receive?part=die-9-16', '/tools/receive?part=fluid'],
  '/accept': ['/accept'],
  '/accept/[lineId]': ['/accept/J-086.1', '/accept/J-085.1', '/accept/J-094.1'],
  '/bench': ['/bench'],
  '/bench/conflicts': ['/bench/conflicts'],
  '/calendar': ['/calendar', '/calendar?month=2026-12&kind=calibration'],
  '/crib': ['/crib', '/crib?unknown=D-99-99'],
  '/crib/count': ['/crib/count'],
  '/crib/issue/[lineId]': ['/crib/issue/J-088.1', '/crib/issue/J-094.1'],
  // A kit has an ID of its own in every demo shop: it is reached from the crib, below.
  '/crib/kits/[id]': [],
  '/crib/kits/[id]/slip': [],
  '/fluid': ['/fluid', '/fluid?material=ti-2&duty=ordinary'],
  '/fluid/[id]': ['/fluid/F-L02', '/fluid/F-L04', '/fluid/F-L08'],
  '/fluid/[id]/label': ['/fluid/F-L04/label'],
  '/fluid/register': ['/fluid/register'],
  '/plan': ['/plan'],
  '/recalls': ['/recalls'],
  '/recalls/[id]': ['/recalls/CG-38-1.R1'],
  '/recalls/new': ['/recalls/new', '/recalls/new?gauge=G-56-GO-1', '/recalls/new?gauge=D-38-11'],
  '/plan/jobs/[id]': ['/plan/jobs/J-087', '/plan/jobs/J-094'],
  '/plan/jobs/new': ['/plan/jobs/new'],
  '/plan/lines/[id]': ['/plan/lines/J-087.1', '/plan/lines/J-092.1', '/plan/lines/J-094.1'],
  '/plan/costs': ['/plan/costs'],
  '/plan/orders/[id]': ['/plan/orders/PO-118', '/plan/orders/PO-119'],
  '/plan/orders/need/[partId]': ['/plan/orders/need/die-9-16', '/plan/orders/need/die-3-8'],
  '/plan/replace': ['/plan/replace'],
  '/plan/week': ['/plan/week'],
  '/plan/weeks': ['/plan/weeks'],
  '/plan/what-if': [
    '/plan/what-if',
    '/plan/what-if?c=lose-tool~D-38-11&c=slip-order~PO-118~21&c=add-line~1-high~2507~20~2026-12-01~2027-01-10~precious',
    '/plan/what-if?c=sell-tool~D-38-11&lineId=J-087.1',
  ],
  '/plan/orders': ['/plan/orders'],
  '/plan/orders/new': ['/plan/orders/new', '/plan/orders/new?part=die-1-4'],
  '/gauges': ['/gauges'],
  '/gauges/[id]': [
    '/gauges/G-38-GO-1?days=548',
    '/gauges/G-38-NG-2',
    '/gauges/CG-38-1',
    '/gauges/G-25-GO-2',
    '/gauges/SP-56-1',
  ],
  '/gauges/stickers': ['/gauges/stickers', '/gauges/stickers?gauge=G-38-GO-1'],
  '/labels': ['/labels', '/labels?ids=D-38-11%0ANO-1&stock=a4-3x8&code=qr&kind=die'],
  '/ledger': ['/ledger'],
  '/sizes': ['/sizes'],
  '/sizes/[id]': ['/sizes/9-16-high', '/sizes/1-medium?angle=1.2&nose=0.01&held=length'],
  '/sizes/new': ['/sizes/new'],
  '/sizes/materials/[id]': ['/sizes/materials/2507'],
  '/threads': [
    '/threads',
    '/threads?size=1&tpi=14&over=25.7',
    '/threads?size=9/16&tpi=18&over=14.5&overUnit=mm',
  ],
  '/parts': ['/parts'],
  '/parts/[id]': ['/parts/die-9-16', '/parts/fluid'],
  '/wear': ['/wear'],
  '/wear/[partId]': ['/wear/die-9-16', '/wear/blade-3-8-medium'],
  '/rooms': ['/rooms'],
  '/scorecard': ['/scorecard'],
  '/import': ['/import'],
  '/setup': ['/setup'],
  '/who': ['/who'],
};
const addresses = Object.values(screens).flat();

/** Folders whose names begin with an underscore or stand in brackets are no part of the address, or a changing one. */
function routesOfPages(): string[] {
  const pages = readdirSync(`${root}app`, { recursive: true, encoding: 'utf8' });
  return pages
    .filter((path) => /(^|\/)page\.tsx$/.test(path))
    .map((path) => `/${path}`.replace(/\/page\.tsx$/, '') || '/')
    .sort();
}

it('knows every screen there is', () => {
  expect(Object.keys(screens).sort()).toEqual(routesOfPages());
});

it('looks at every page that the page of all pages leads to', () => {
  const led = ROOMS.flatMap(({ pages }) => pages.map(({ href }) => href));
  expect(led.filter((href) => !addresses.includes(href))).toEqual([]);
});

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** What is wrong with the page as it stands. */
async function wrongs(page: Page, where: string, rules?: string[]): Promise<string[]> {
  const found = await page.evaluate(() => {
    const wrong: string[] = [];
    const { scrollWidth } = document.documentElement;
    if (scrollWidth > window.innerWidth) wrong.push(`${scrollWidth} px wide in ${window.innerWidth}`);
    const ids = [...document.querySelectorAll('[id]')].map(({ id }) => id);
    const twice = ids.filter((id, at) => ids.indexOf(id) !== at);
    if (twice.length > 0) wrong.push(`IDs used twice: ${[...new Set(twice)].join(', ')}`);
    const headings = document.querySelectorAll('h1').length;
    if (headings !== 1) wrong.push(`${headings} first headings`);
    return wrong;
  });
  const reds = await alarms(page);
  if (reds > 1) found.push(`${reds} red things`);
  return [...found, ...(await axeViolations(page, rules))].map((wrong) => `${where}: ${wrong}`);
}

/** How many visible things stand on alarm red. The printed pages and the safety signs have their own rules. */
function alarms(page: Page): Promise<number> {
  return page.evaluate(() => {
    const probe = document.createElement('i');
    probe.style.color = 'var(--safety-red)';
    document.body.append(probe);
    const red = getComputedStyle(probe).color;
    probe.remove();
    return [...document.querySelectorAll('body *')].filter(
      (element) => getComputedStyle(element).backgroundColor === red && element.getClientRects().length > 0,
    ).length;
  });
}

async function signedIn(size: keyof typeof viewports): Promise<BrowserContext> {
  const context = await browser.newContext({ ...viewports[size], baseURL: shopAddress() });
  const page = await context.newPage();
  await page.goto('/who');
  await page.getByRole('button', { name: /^Lead-1\b/ }).click();
  await page.getByRole('link', { name: 'Acting as Lead-1' }).waitFor();
  await page.close();
  return context;
}

/**
 * How each screen is looked at: on one device after the other. On dark paper only the colours are others, on the tablet (the
 * desktop's window made smaller) only the places. A second face of a route has the first one's parts: one look is enough.
 */
const looks = [
  [
    'phone',
    [
      { size: 'phone', colorScheme: 'light' },
      { size: 'phone', colorScheme: 'dark', rules: ['color-contrast'] },
    ],
  ],
  [
    'desktop',
    [
      { size: 'desktop', colorScheme: 'light' },
      { size: 'tablet', colorScheme: 'light', rules: ['target-size', 'scrollable-region-focusable'] },
    ],
  ],
] as const;
const firstFaces = new Set(Object.values(screens).map(([first]) => first));

describe.each(looks)('from a %s', (device, faces) => {
  let context: BrowserContext;
  let watched: Awaited<ReturnType<typeof watchedPage>>;
  beforeAll(async () => {
    context = await signedIn(device);
    watched = await watchedPage(context);
  });
  afterAll(() => context.close());

  it.each(addresses)('%s is accessible, fits, is calm and makes no fault', async (address) => {
    const { page, faults } = watched;
    faults.length = 0;
    await page.setViewportSize(viewports[device].viewport);
    await page.emulateMedia({ colorScheme: 'light' });
    const answer = await page.goto(address);
    expect(answer?.status()).toBe(200);
    const found: string[] = [];
    for (const { size, colorScheme, ...only } of firstFaces.has(address) ? faces : faces.slice(0, 1)) {
      await page.setViewportSize(viewports[size].viewport);
      await page.emulateMedia({ colorScheme });
      const rules = 'rules' in only ? [...only.rules] : undefined;
      found.push(...(await wrongs(page, `${size} ${colorScheme} ${address}`, rules)));
    }
    // What lies folded away must be told apart too.
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('details')) fold.open = true;
    });
    if (device === 'phone') found.push(...(await axeViolations(page, ['landmark-unique'])));
    expect(found).toEqual([]);
    expect(faults).toEqual([]);
  });
});

it('a kit and its slip, reached from the crib, are as the other screens', async () => {
  const context = await signedIn('phone');
  const { page, faults } = await watchedPage(context);
  await page.goto('/crib');
  const kit = await page.locator('main a[href^="/crib/kits/"]').first().getAttribute('href');
  const found: string[] = [];
  for (const address of [`${kit}`, `${kit}/slip`]) {
    expect((await page.goto(address))?.status()).toBe(200);
    for (const size of ['phone', 'desktop'] as const) {
      await page.setViewportSize(viewports[size].viewport);
      found.push(...(await wrongs(page, `${size} ${address}`)));
    }
  }
  expect(found).toEqual([]);
  expect(faults).toEqual([]);
  await context.close();
});

it('counts a second red thing when there is one', async () => {
  const context = await signedIn('desktop');
  const { page } = await watchedPage(context);
  // Once the page is alive: React takes away what it did not draw while it wakes up.
  await page.goto('/plan', { waitUntil: 'networkidle' });
  expect(await alarms(page)).toBe(1);
  await page.evaluate(() => {
    const more = document.createElement('p');
    more.style.background = 'var(--safety-red)';
    more.textContent = 'more';
    document.body.append(more);
  });
  expect(await alarms(page)).toBe(2);
  await context.close();
});

it('goes light or dark as chosen at the foot of the page, and stays so', async () => {
  const context = await signedIn('phone');
  const { page, faults } = await watchedPage(context);
  await page.goto('/plan');
  const paper = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
  const light = await paper();
  await page.getByRole('button', { name: 'dark', exact: false }).tap();
  await expect.poll(paper).not.toBe(light);
  await page.goto('/tools');
  expect(await paper()).not.toBe(light);
  expect(faults).toEqual([]);
  await context.close();
});
