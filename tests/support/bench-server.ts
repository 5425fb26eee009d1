import { vi } from 'vitest';
import type { Waiting } from '@/app/bench/_offline/bench-store';
import { BenchEntrySchema } from '@/lib/shop/bench-input';

/** A row of three threads, two of them good, that waits to be sent. */
export const cut = (entryId: string, heldUntilMs = 0): Waiting => ({
  heldUntilMs,
  entry: BenchEntrySchema.parse({
    ...{ kind: 'cut', entryId, deviceAtMs: 1_700_000_000_000, toolId: 'D-1', ends: 3, goodEnds: 2 },
    ...{ connectionId: '9-16-high', materialId: '316', rejects: [] },
  }),
});
/** A server that answers as told, and remembers what it was sent. */
export function server(answer: (entries: { entryId: string }[]) => object, skewMs = 0) {
  const batches: { clockBehindMs: number; entries: { entryId: string }[] }[] = [];
  vi.stubGlobal('fetch', async (address: string, init: RequestInit) => {
    if (address === '/bench/snapshot')
      return Response.json({
        shop: 'demo',
        asOfMs: Date.now() + skewMs + 60_000,
        lines: [],
        nowMs: Date.now() + skewMs,
      });
    const batch = JSON.parse(String(init.body)) as (typeof batches)[number];
    batches.push(batch);
    return Response.json(answer(batch.entries));
  });
  return batches;
}
/** Everything recorded. */
export const recorded = (entries: { entryId: string }[]) => ({
  answers: entries.map(({ entryId }) => ({ entryId, outcome: 'recorded', sentence: '' })),
  refused: null,
});
