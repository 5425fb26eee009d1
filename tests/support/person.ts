import type { Browser, BrowserContextOptions, Locator, Page } from 'playwright-core';
import { viewports, watchedPage } from './browser';

/** Somebody at a screen of the running program: one device with its own name chosen, told apart by its cookie. */
export interface Person {
  readonly page: Page;
  /** Console errors, uncaught exceptions and answers of 400 or more since sitting down. */
  readonly faults: string[];
  /** A part of the page with a heading of its own. */
  readonly panel: (heading: string | RegExp) => Locator;
  /** A form by its name. */
  readonly form: (name: string | RegExp) => Locator;
  readonly leave: () => Promise<void>;
}

interface Seat {
  readonly address: string;
  /** Chosen at "Who is acting"; none in a shop that knows nobody yet. */
  readonly name?: string;
  readonly device?: BrowserContextOptions;
}

/** A step that takes longer than this is a fault; a slow machine under load still makes it. */
const ACT_WITHIN_MS = 15_000;

/** Sits down at a device and chooses a name, as at a shared tablet. */
export async function sitDown(browser: Browser, { address, name, device }: Seat): Promise<Person> {
  const context = await browser.newContext({ ...(device ?? viewports.desktop), baseURL: address });
  context.setDefaultTimeout(ACT_WITHIN_MS);
  const { page, faults } = await watchedPage(context);
  if (name !== undefined) {
    await page.goto('/who');
    await page.getByRole('button', { name: new RegExp(`^${name}\\b`) }).click();
    await page.getByRole('link', { name: `Acting as ${name}` }).waitFor();
  }
  return {
    page,
    faults,
    panel: (heading) => page.getByRole('region', { name: heading }),
    form: (label) => page.getByRole('form', { name: label }),
    leave: () => context.close(),
  };
}

/** Types an ID into the find box as a hand scanner does: very fast, then Enter. Gives the page that it led to. */
export async function scan({ page }: Person, id: string): Promise<void> {
  await page.getByRole('textbox', { name: 'Scan or type a tool ID' }).focus();
  await page.keyboard.type(id);
  await Promise.all([
    page.waitForURL((url) => url.pathname.startsWith('/tools')),
    page.keyboard.press('Enter'),
  ]);
}

/** Chooses an entry of a list by the beginning of what it says. */
export async function choose(list: Locator, label: string | RegExp): Promise<void> {
  const option = list.getByRole('option', { name: label }).first();
  await list.selectOption({ label: ((await option.textContent()) ?? '').trim() });
}
