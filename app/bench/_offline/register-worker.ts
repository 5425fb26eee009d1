'use client';

import { SCAN_PARTS } from '@/app/_shared/scan/scan-parts';

/**
 * Lets the bench open without network: the worker keeps the page and its parts. Only where the browser allows it (https,
 * or this very machine); elsewhere an open page goes on working, and says that it cannot be opened anew.
 */
export async function registerWorker(): Promise<boolean> {
  if (!('serviceWorker' in navigator)) return false;
  await navigator.serviceWorker.register('/bench-worker.js', { scope: '/bench' });
  const { active } = await navigator.serviceWorker.ready;
  const parts = performance
    .getEntriesByType('resource')
    .map(({ name }) => name)
    .filter((name) => name.startsWith(`${location.origin}/_next/static/`));
  active?.postMessage({ keep: [...parts, ...SCAN_PARTS] });
  return true;
}
