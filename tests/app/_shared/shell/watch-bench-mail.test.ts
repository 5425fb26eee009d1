import 'fake-indexeddb/auto';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { type BenchMail, watchBenchMail } from '@/app/_shared/shell/watch-bench-mail';
import { addToOutbox } from '@/app/bench/_offline/bench-store';
import { cut, recorded, server } from '../../../support/bench-server';
import { stubPageLocks } from '../../../support/page-locks';

let moments: EventTarget;
beforeEach(() => {
  moments = new EventTarget();
  for (const name of ['addEventListener', 'removeEventListener'] as const)
    vi.stubGlobal(name, moments[name].bind(moments));
  stubPageLocks();
});
afterEach(() => vi.unstubAllGlobals());

/** A page that watches, what it was told, and how often it was to show itself anew. */
function page() {
  const told: BenchMail[] = [];
  const onSent = vi.fn();
  const leave = watchBenchMail({ tell: (mail) => told.push(mail), onSent });
  return { told, onSent, leave, last: () => told.at(-1) };
}

it('makes no store on a device that was never a bench', async () => {
  const { told, leave, onSent } = page();
  await expect.poll(() => told).toMatchObject([{ waiting: 0, sent: 0 }]);
  expect(await indexedDB.databases()).toEqual([]);
  expect(onSent).not.toHaveBeenCalled();
  leave();
});

// source: hand. One waits, then none; one was sent; the page is shown anew once.
it('says what waits, sends it, says so, and has the page shown anew once', async () => {
  await addToOutbox(cut('entry-00001', Date.now() + 10_000));
  server(recorded);
  const { told, leave, onSent } = page();
  await expect
    .poll(() => told.map(({ waiting, sent }) => [waiting, sent]))
    .toEqual([
      [1, 0],
      [0, 1],
    ]);
  expect(onSent).toHaveBeenCalledTimes(1);
  leave();
});

it('tries again when the network is back, and no more once the page is left', async () => {
  await addToOutbox(cut('entry-00002'));
  vi.stubGlobal('fetch', async () => {
    throw new TypeError('no network');
  });
  const { told, last, leave, onSent } = page();
  await expect.poll(last).toMatchObject({ waiting: 1, reached: false });
  const batches = server(recorded);
  moments.dispatchEvent(new Event('online'));
  await expect.poll(last).toMatchObject({ waiting: 0, sent: 1 });
  expect(onSent).toHaveBeenCalledTimes(1);
  leave();
  const before = told.length;
  await addToOutbox(cut('entry-00003'));
  moments.dispatchEvent(new Event('online'));
  await new Promise((resolve) => setTimeout(resolve, 100));
  expect([told.length, batches.length]).toEqual([before, 1]);
});
