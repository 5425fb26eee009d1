import 'fake-indexeddb/auto';
import { afterEach, expect, it, vi } from 'vitest';
import { moveToOutbox, readBench } from '@/app/bench/_offline/bench-store';
import { syncBench } from '@/app/bench/_offline/sync';
import { cut, recorded, server } from '../../support/bench-server';

const line = { presses: [], lineId: 'J-1.1' };
afterEach(() => vi.unstubAllGlobals());

// source: hand. A device 24 hours slow: the server's clock is 86,400,000 ms ahead of it, to the second.
it('reads how far the clock of the device is off, and sends it along', async () => {
  const day = 86_400_000;
  server(recorded, day);
  await syncBench();
  expect(Math.abs((await readBench()).clockBehindMs - day)).toBeLessThan(2000);
  await moveToOutbox(line, [cut('entry-00007')]);
  const batches = server(recorded, day);
  await syncBench();
  expect(batches).toHaveLength(1);
  expect(Math.abs((batches[0]?.clockBehindMs ?? 0) - day)).toBeLessThan(2000);
});
