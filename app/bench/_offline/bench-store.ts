'use client';

import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { BenchSnapshot } from '@/lib/bench/bench-snapshot';
import type { BenchPress } from '@/lib/bench/bench-tally';
import type { BenchEntry, Stop } from '@/lib/shop/bench-input';
import { BENCH_DB_NAME } from './bench-db-name';

/** The work in hand at this device for one line: every press, in order. */
export interface BenchSession {
  readonly lineId: string;
  readonly presses: readonly BenchPress[];
}

/** An entry that waits to be sent. Held for ten seconds, so that it can be undone where it was made. */
export interface Waiting {
  readonly entry: BenchEntry;
  readonly heldUntilMs: number;
}

/** An entry that the server has counted, until a snapshot holds it too. */
export interface Sent {
  readonly toolId: string;
  readonly ends: number;
  readonly goodEnds: number;
  readonly sentAtMs: number;
  /** It was stopped with this: no snapshot from before that may call it good to go. */
  readonly stopped?: Stop;
}

interface BenchDb extends DBSchema {
  snapshot: { key: 'now'; value: BenchSnapshot };
  session: { key: string; value: BenchSession };
  outbox: { key: number; value: Waiting };
  sent: { key: number; value: Sent };
  /** Server clock less device clock, as last seen. */
  clock: { key: 'behindMs'; value: number };
}

let opened: Promise<IDBPDatabase<BenchDb>> | undefined;

/** The device's own store. Everything pressed is in it before the screen says so: a dead battery loses nothing. */
export function benchDb(): Promise<IDBPDatabase<BenchDb>> {
  opened ??= openDB<BenchDb>(BENCH_DB_NAME, 1, {
    upgrade(db) {
      db.createObjectStore('snapshot');
      db.createObjectStore('session', { keyPath: 'lineId' });
      db.createObjectStore('outbox', { autoIncrement: true });
      db.createObjectStore('sent', { autoIncrement: true });
      db.createObjectStore('clock');
    },
  });
  return opened;
}

/** Everything that the bench screen shows, as it lies on the device. */
export interface BenchState {
  readonly snapshot: BenchSnapshot | undefined;
  readonly sessions: readonly BenchSession[];
  readonly outbox: readonly (Waiting & { readonly key: number })[];
  readonly sent: readonly Sent[];
  readonly clockBehindMs: number;
}

export async function readBench(): Promise<BenchState> {
  const db = await benchDb();
  const tx = db.transaction(['snapshot', 'session', 'outbox', 'sent', 'clock']);
  const [snapshot, sessions, rows, keys, sent, behind] = await Promise.all([
    tx.objectStore('snapshot').get('now'),
    tx.objectStore('session').getAll(),
    tx.objectStore('outbox').getAll(),
    tx.objectStore('outbox').getAllKeys(),
    tx.objectStore('sent').getAll(),
    tx.objectStore('clock').get('behindMs'),
  ]);
  const outbox = rows.map((row, i) => ({ ...row, key: keys[i] ?? -1 }));
  return { snapshot, sessions, outbox, sent, clockBehindMs: behind ?? 0 };
}

/** Keeps the presses of the work in hand; no presses, no session. */
export async function keepSession(session: BenchSession): Promise<void> {
  const db = await benchDb();
  if (session.presses.length === 0) await db.delete('session', session.lineId);
  else await db.put('session', session);
}

/** Moves work from the hand to what waits to be sent, in one step: never both, never neither. */
export async function moveToOutbox(session: BenchSession, waiting: readonly Waiting[]): Promise<void> {
  const tx = (await benchDb()).transaction(['session', 'outbox'], 'readwrite');
  if (session.presses.length === 0) await tx.objectStore('session').delete(session.lineId);
  else await tx.objectStore('session').put(session);
  for (const row of waiting) await tx.objectStore('outbox').add(row);
  await tx.done;
}

/** Takes back what still waits, and gives the presses back to the hand. False when some of it was already sent. */
export async function takeFromOutbox(entryIds: readonly string[], session: BenchSession): Promise<boolean> {
  const tx = (await benchDb()).transaction(['session', 'outbox'], 'readwrite');
  const store = tx.objectStore('outbox');
  const found: number[] = [];
  for (let cursor = await store.openCursor(); cursor !== null; cursor = await cursor.continue())
    if (entryIds.includes(cursor.value.entry.entryId)) found.push(cursor.key);
  if (found.length !== entryIds.length) return false;
  for (const key of found) await store.delete(key);
  await tx.objectStore('session').put(session);
  await tx.done;
  return true;
}

/** Adds something to what waits to be sent, beside the work in hand. */
export async function addToOutbox(waiting: Waiting): Promise<void> {
  await (await benchDb()).add('outbox', waiting);
}

/** Until when each entry that waits to be sent is held, in the order in which they were made. */
export async function waitingTimes(): Promise<readonly number[]> {
  return (await (await benchDb()).getAll('outbox')).map(({ heldUntilMs }) => heldUntilMs);
}

/** Lets go all that is held for its Undo. Only where that can no longer be pressed. */
export async function endHolds(): Promise<void> {
  const tx = (await benchDb()).transaction('outbox', 'readwrite');
  for (let cursor = await tx.store.openCursor(); cursor !== null; cursor = await cursor.continue())
    if (cursor.value.heldUntilMs > 0) await cursor.update({ ...cursor.value, heldUntilMs: 0 });
  await tx.done;
}
