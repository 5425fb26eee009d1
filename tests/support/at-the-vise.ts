import type { Page } from 'playwright-core';
import type { Db } from '@/db/open';

/** Work of the demo shop that has its blade and die at the bench already. */
export const LINE = 'J-086.1';
export const DIE = 'D-38-11';
export const BLADE = 'B-38-08';

/** Ends of the edge in hand by the record. */
export function recorded(db: Db, toolId: string): { ends: number; good: number } {
  const use = db.$client
    .prepare(
      'SELECT SUM(ends) AS ends, SUM(good_ends) AS good FROM cut WHERE tool_id = ? AND job_line_id = ?',
    )
    .get(toolId, LINE) as { ends: number | null; good: number | null };
  return { ends: use.ends ?? 0, good: use.good ?? 0 };
}

export const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true });
export const now = (page: Page) => page.getByText(/^\d+ (cone|thread)s? now/).textContent();
/** As the page does by itself every twenty seconds, and when the network or the person comes back. */
export const round = (page: Page) => page.evaluate(() => window.dispatchEvent(new Event('focus')));

export async function scan(page: Page, toolId: string): Promise<void> {
  await page.keyboard.type(toolId);
  await page.keyboard.press('Enter');
}

/** The die of the line in hand, scanned. */
export async function atTheVise(page: Page): Promise<void> {
  await page.goto('/bench');
  await page.getByRole('button', { name: new RegExp(LINE) }).waitFor();
  await scan(page, DIE);
  await button(page, '+1').waitFor();
}

export async function finish(page: Page): Promise<void> {
  await button(page, 'Finish').tap();
  await button(page, 'Log it').tap();
  await page.getByText('Finished').waitFor();
}
