'use client';

import type { BenchSnapshot } from '@/lib/bench/bench-snapshot';
import { inTurn } from './across-pages';
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
let settledCount = 0;

/** Entries that the server took from this page since it was opened. */
export function settledHere(): number {
  return settledCount;
}

/**
 * One round: what waits is sent in order, then the shop's lines are fetched anew. Rounds never overlap on a page, nor in the
 * pages of one browser where it lets them take turns; who asks while one is under way gets the one after it, which knows what
 * has happened since.
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
  running = inTurn(round).finally(() => {
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
export function isHeld(heldUntilMs: number): boolean {
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
  let settled = 0;
  for (const { key, entry } of due) {
    const outcome = taken.get(entry.entryId);
    // Another page of this browser may have settled it meanwhile: it is known as sent once.
    if (outcome === undefined || (await tx.objectStore('outbox').getKey(key)) === undefined) continue;
    await tx.objectStore('outbox').delete(key);
    settled += 1;
    if (outcome === 'conflict') continue;
    const about = { toolId: entry.toolId, sentAtMs: Date.now() };
    if (entry.kind === 'cut')
      await tx.objectStore('sent').add({ ...about, ends: entry.ends, goodEnds: entry.goodEnds });
    if (entry.kind === 'stop')
      await tx.objectStore('sent').add({ ...about, ends: 0, goodEnds: 0, stopped: entry.how });
  }
  await tx.done;
  settledCount += settled;
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
