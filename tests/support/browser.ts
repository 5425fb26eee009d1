import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
} from 'playwright-core';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-dev-shm-usage',
  '--no-first-run',
  '--disable-background-networking',
];

/** The three sizes every screen is looked at. */
export const viewports = {
  phone: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 },
  tablet: { viewport: { width: 820, height: 1180 }, hasTouch: true },
  desktop: { viewport: { width: 1440, height: 900 } },
} as const satisfies Record<string, BrowserContextOptions>;

/** More flags are for what a device has besides a screen: a false camera with a film in it. */
export function launchBrowser(more: readonly string[] = []): Promise<Browser> {
  const executablePath = process.env.CHROMIUM_PATH || '/usr/bin/chromium';
  if (!existsSync(executablePath))
    throw new Error(`Chromium is not at ${executablePath}: set CHROMIUM_PATH.`);
  return chromium.launch({ executablePath, args: [...flags, ...more] });
}

/** A page that remembers every console error, uncaught exception and answer of 400 or more. */
export async function watchedPage(context: BrowserContext): Promise<{ page: Page; faults: string[] }> {
  const page = await context.newPage();
  const faults: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning')
      faults.push(`console: ${message.text()} ${message.location().url}`);
  });
  page.on('pageerror', (error) => faults.push(`exception: ${error.message}`));
  page.on('response', (response) => {
    if (response.status() >= 400) faults.push(`${response.status()} ${response.url()}`);
  });
  return { page, faults };
}

/**
 * The accessibility violations of the page as it stands, one line each; `rules` asks for these only. Content security
 * policy does not bind this call.
 */
export async function axeViolations(page: Page, rules?: string[]): Promise<string[]> {
  // While a page refreshes itself its title is taken away and set again.
  if ((await page.title()) === '') await page.waitForFunction(() => document.title !== '');
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axeSource);
  return page.evaluate(async (values) => {
    const { axe } = globalThis as unknown as { axe: typeof import('axe-core') };
    const runOnly = values && { type: 'rule' as const, values };
    const { violations, passes } = await axe.run(document, {
      resultTypes: ['violations'],
      ...(runOnly && { runOnly }),
    });
    if (violations.length + passes.length === 0) throw new Error('axe checked nothing');
    return violations.map(
      ({ id, help, nodes }) => `${id}: ${help} at ${nodes.map((node) => node.target).join(', ')}`,
    );
  }, rules);
}
