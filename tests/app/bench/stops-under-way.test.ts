import 'fake-indexeddb/auto';
import { afterEach, expect, it, vi } from 'vitest';
import { moveToOutbox, readBench } from '@/app/bench/_offline/bench-store';
import { syncBench } from '@/app/bench/_offline/sync';
import { losesPieces, stopsUnderWay } from '@/app/bench/_parts/stops-under-way';
import { BenchEntrySchema } from '@/lib/shop/bench-input';

afterEach(() => vi.unstubAllGlobals());

const broken = BenchEntrySchema.parse({
  ...{ kind: 'stop', toolId: 'D-1', how: 'broken', entryId: 'stop-00001', deviceAtMs: 1_700_000_000_000 },
});

/** A server that takes everything; its figures are of this moment. */
function serverAsOf(asOfMs: () => number): void {
  vi.stubGlobal('fetch', async (_address: string, init?: { body?: string }) => {
    const sent = init?.body === undefined ? [] : JSON.parse(init.body).entries;
    const answers = sent.map(({ entryId }: { entryId: string }) => ({
      entryId,
      outcome: 'recorded',
      sentence: '',
    }));
    return Response.json({ asOfMs: asOfMs(), nowMs: Date.now(), lines: [], answers, refused: null });
  });
}

// source: hand. TRADE: a broken die is never "go". The stop is known from the press until the figures shown are later than it.
it('knows of a stop while it waits, and after it was sent until a snapshot holds it', async () => {
  const stops = async () =>
    stopsUnderWay(await readBench()).map(({ toolId, how, waiting }) => [toolId, how, waiting === true]);
  await moveToOutbox({ lineId: 'J-1.1', presses: [] }, [{ entry: broken, heldUntilMs: 0 }]);
  expect(await stops()).toEqual([['D-1', 'broken', true]]);
  const beforeMs = Date.now() - 60_000;
  serverAsOf(() => beforeMs);
  await syncBench();
  expect((await readBench()).outbox).toEqual([]);
  expect(await stops()).toEqual([['D-1', 'broken', false]]);
  serverAsOf(() => Date.now() + 60_000);
  await syncBench();
  expect(await stops()).toEqual([]);
});

it.each([
  ['broken', true],
  ['chipped', true],
  ['hard', false],
  ['dropped', false],
] as const)('%s: pieces to be found %s', (how, pieces) => {
  expect(losesPieces({ toolId: 'D-1', how })).toBe(pieces);
});
