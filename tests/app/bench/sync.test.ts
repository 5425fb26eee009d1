import 'fake-indexeddb/auto';
import { afterEach, expect, it, vi } from 'vitest';
import { moveToOutbox, readBench } from '@/app/bench/_offline/bench-store';
import { syncBench } from '@/app/bench/_offline/sync';
import { cut, recorded, server } from '../../support/bench-server';

const line = { presses: [], lineId: 'J-1.1' };
afterEach(() => vi.unstubAllGlobals());

// source: hand. In the order in which they were made; what is held for its undo stays, and all that comes after it.
it('sends what is due, in order, and keeps what is held', async () => {
  await moveToOutbox(line, [
    cut('entry-00001'),
    cut('entry-00002'),
    cut('entry-00003', Date.now() + 60_000),
    cut('entry-00004'),
  ]);
  const batches = server(recorded);
  expect(await syncBench()).toMatchObject({ reached: true, conflicts: [], needsName: false });
  expect(batches.map(({ entries }) => entries.map(({ entryId }) => entryId))).toEqual([
    ['entry-00001', 'entry-00002'],
  ]);
  expect((await readBench()).outbox.map(({ entry }) => entry.entryId)).toEqual([
    'entry-00003',
    'entry-00004',
  ]);
  await moveToOutbox(line, []);
});

// source: hand. No answer: everything stays. An answer for the first of two: the second stays.
it('loses nothing without network, nor where the server stops half way', async () => {
  const before = (await readBench()).outbox.length;
  vi.stubGlobal('fetch', async () => {
    throw new TypeError('no network');
  });
  expect(await syncBench()).toEqual({ reached: false });
  expect((await readBench()).outbox).toHaveLength(before);
  await moveToOutbox(line, [cut('entry-00005'), cut('entry-00006')]);
  server(([first]) => ({
    answers: first ? [{ entryId: first.entryId, outcome: 'recorded', sentence: '' }] : [],
    refused: { code: 'who', sentence: 'Say who you are first.' },
  }));
  expect(await syncBench()).toMatchObject({ reached: true });
});

// source: hand. Whoever asks during a round gets one of their own after it, all who asked the same one; never two at a time.
it('answers those who ask during a round with the round after it', async () => {
  let open = 0;
  let most = 0;
  let rounds = 0;
  let reached = true;
  vi.stubGlobal('fetch', async () => {
    open += 1;
    rounds += 1;
    most = Math.max(most, open);
    await new Promise((wait) => setTimeout(wait, 20));
    open -= 1;
    if (!reached) throw new TypeError('no network');
    return Response.json({ asOfMs: 0, nowMs: Date.now(), answers: [], refused: null });
  });
  await moveToOutbox(line, []);
  const first = syncBench();
  const [second, third] = [syncBench(), syncBench()];
  expect((await first).reached).toBe(true);
  reached = false;
  expect([(await second).reached, (await third).reached]).toEqual([false, false]);
  expect([most, rounds]).toEqual([1, 2]);
});
