'use client';

import type { BenchSnapshot } from '@/lib/bench/bench-snapshot';
import { benchDb, readBench } from './bench-store';

/** What a round with the server came to. */
export type SyncResult =
  | { readonly reached: true; readonly conflicts: readonly string[]; readonly needsName: boolean }
  | { readonly reached: false };

interface Answers {
  readonly answers: readonly {
    entryId: string;
    outcome: 'recorded' | 'already' | 'conflict';
    sentence: string;
  }[];
  readonly refused: { readonly code: string; readonly sentence: string } | null;
}

const BATCH_MAX = 200;
const PATIENCE_MS = 8000;
/** The clock of the server is read to the second; a device this near is right. */
const CLOCK_SLACK_MS = 2000;
const HELD_MAX_MS = 120_000;

let running: Promise<SyncResult> | undefined;
let next: Promise<SyncResult> | undefined;

/**
 * One round: what waits is sent in order, then the shop's lines are fetched anew. Rounds never overlap on a device; who
 * asks while one is under way gets the one after it, which knows what has happened since.
 */
export function syncBench(): Promise<SyncResult> {
  if (running === undefined) return start();
  next ??= running.then(() => {
    next = undefined;
    return syncBench();
  });
  return next;
}

function start(): Promise<SyncResult> {
  running = round().finally(() => {
    running = undefined;
  });
  return running;
}

async function round(): Promise<SyncResult> {
  try {
    const sent = await sendWaiting();
    await fetchSnapshot();
    return { reached: true, ...sent };
  } catch {
    return { reached: false };
  }
}

async function sendWaiting(): Promise<{ conflicts: string[]; needsName: boolean }> {
  const conflicts: string[] = [];
  for (;;) {
    const { outbox, clockBehindMs } = await readBench();
    const first = outbox.findIndex(({ heldUntilMs }) => isHeld(heldUntilMs));
    const due = outbox.slice(0, first === -1 ? BATCH_MAX : Math.min(first, BATCH_MAX));
    if (due.length === 0) return { conflicts, needsName: false };
    const response = await fetchSoon('/bench/entries', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ clockBehindMs, entries: due.map(({ entry }) => entry) }),
    });
    const { answers, refused } = (await response.json()) as Answers;
    await settle(due, answers);
    conflicts.push(
      ...answers.filter(({ outcome }) => outcome === 'conflict').map(({ sentence }) => sentence),
    );
    if (refused !== null) return { conflicts, needsName: refused.code === 'who' };
    if (answers.length === 0) return { conflicts, needsName: false };
  }
}

/** Held for its Undo. One held for longer than that was made before the clock of the device was set back: it goes. */
function isHeld(heldUntilMs: number): boolean {
  const waitMs = heldUntilMs - Date.now();
  return waitMs > 0 && waitMs <= HELD_MAX_MS;
}

/** What the server has taken leaves the outbox in one step; what it counted stays known until a snapshot holds it. */
async function settle(
  due: Awaited<ReturnType<typeof readBench>>['outbox'],
  answers: Answers['answers'],
): Promise<void> {
  const taken = new Map(answers.map((answer) => [answer.entryId, answer.outcome]));
  const tx = (await benchDb()).transaction(['outbox', 'sent'], 'readwrite');
  for (const { key, entry } of due) {
    const outcome = taken.get(entry.entryId);
    if (outcome === undefined) continue;
    await tx.objectStore('outbox').delete(key);
    if (outcome !== 'conflict' && entry.kind === 'cut')
      await tx
        .objectStore('sent')
        .add({ toolId: entry.toolId, ends: entry.ends, goodEnds: entry.goodEnds, sentAtMs: Date.now() });
  }
  await tx.done;
}

async function fetchSnapshot(): Promise<void> {
  const askedAtMs = Date.now();
  const response = await fetchSoon('/bench/snapshot', { headers: { accept: 'application/json' } });
  if (!response.ok) throw new Error(`snapshot ${response.status}`);
  const { nowMs, ...snapshot } = (await response.json()) as BenchSnapshot & { nowMs: number };
  const wayMs = (Date.now() - askedAtMs) / 2;
  const exactBehindMs = nowMs - (askedAtMs + wayMs);
  const behindMs = Math.abs(exactBehindMs) < CLOCK_SLACK_MS ? 0 : Math.round(exactBehindMs);
  const tx = (await benchDb()).transaction(['snapshot', 'sent', 'clock'], 'readwrite');
  await tx.objectStore('snapshot').put(snapshot, 'now');
  await tx.objectStore('clock').put(behindMs, 'behindMs');
  const store = tx.objectStore('sent');
  // Counted before this snapshot was asked for, by the server's clock: it is in its figures now.
  for (let cursor = await store.openCursor(); cursor !== null; cursor = await cursor.continue())
    if (cursor.value.sentAtMs + exactBehindMs + wayMs <= snapshot.asOfMs) await cursor.delete();
  await tx.done;
}

async function fetchSoon(address: string, init: RequestInit): Promise<Response> {
  return fetch(address, {
    ...init,
    cache: 'no-store',
    credentials: 'same-origin',
    signal: AbortSignal.timeout(PATIENCE_MS),
  });
}
