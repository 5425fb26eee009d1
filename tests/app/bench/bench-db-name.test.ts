import 'fake-indexeddb/auto';
import { afterEach, expect, it, vi } from 'vitest';
import { wasBench } from '@/app/bench/_offline/bench-db-name';
import { benchDb } from '@/app/bench/_offline/bench-store';

afterEach(() => vi.unstubAllGlobals());

// source: hand. Asking makes no store; a store made by the bench is found.
it('knows whether this device was ever a bench, without making it one', async () => {
  expect(await wasBench()).toBe(false);
  expect(await indexedDB.databases()).toEqual([]);
  await benchDb();
  expect(await wasBench()).toBe(true);
});

// source: hand. A browser that cannot list its stores may be a bench; one that keeps nothing has nothing to send.
it.each([
  [{}, true],
  [undefined, false],
])('takes %j for a bench: %s', async (store, bench) => {
  vi.stubGlobal('indexedDB', store);
  expect(await wasBench()).toBe(bench);
});
