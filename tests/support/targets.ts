import type { Page } from 'playwright-core';

/** Everything on the page itself that a finger can press. */
const TARGETS = 'main :is(button, a[href], input:not([type="hidden"]), select, textarea, summary)';

/**
 * What is wrong with the targets of the page as it stands, one line each: any that is under `sizePx` high or wide, and any
 * two that are nearer to each other than `gapPx`. Measured in CSS pixels, on what is visible. Throws when there is none.
 */
export async function targetFaults(page: Page, { sizePx, gapPx }: { sizePx: number; gapPx: number }) {
  const boxes = await page.locator(TARGETS).evaluateAll((elements) =>
    elements
      .filter((element) => element.checkVisibility())
      .map((element) => {
        const { left, right, top, bottom } = element.getBoundingClientRect();
        const name = (element.getAttribute('aria-label') ?? element.textContent ?? '').trim() || element.id;
        return { name, left, right, top, bottom };
      }),
  );
  if (boxes.length === 0) throw new Error('There is no target on this page.');
  const small = boxes
    .filter(({ left, right, top, bottom }) => Math.min(right - left, bottom - top) < sizePx - 0.01)
    .map(({ name, left, right, top, bottom }) => `${name}: ${right - left} × ${bottom - top}`);
  const near = boxes.flatMap((a, i) =>
    boxes.slice(i + 1).flatMap((b) => {
      const acrossPx = Math.max(0, a.left - b.right, b.left - a.right);
      const downPx = Math.max(0, a.top - b.bottom, b.top - a.bottom);
      const gap = Math.hypot(acrossPx, downPx);
      return gap < gapPx - 0.01 ? [`${a.name} and ${b.name}: ${gap} apart`] : [];
    }),
  );
  return [...small, ...near];
}
