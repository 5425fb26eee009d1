'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import { watchUndo } from './across-pages';
import { type BenchState, readBench } from './bench-store';
import { type SyncResult, syncBench } from './sync';

const ROUND_MS = 20_000;

export interface Bench {
  /** Undefined until the device's store has been read. */
  readonly state: BenchState | undefined;
  /** What the last round with the server came to; undefined before the first. */
  readonly last: SyncResult | undefined;
  /** Reads the store again, after something was put into it. */
  readonly reread: () => Promise<void>;
  /** Goes to the server now. */
  readonly sync: () => Promise<void>;
}

/** The device's store, kept in step with the server as far as there is a network: at once, and every so often. */
export function useBench(): Bench {
  const [state, setState] = useState<BenchState>();
  const [last, setLast] = useState<SyncResult>();
  const alive = useRef(true);
  const asked = useRef(0);
  const shown = useRef(0);

  const reread = useCallback(async () => {
    const nr = ++asked.current;
    const read = await readBench();
    // A read that was asked for earlier and came later knows less.
    if (!alive.current || nr < shown.current) return;
    shown.current = nr;
    setState(read);
  }, []);
  const sync = useCallback(async () => {
    const result = await syncBench();
    if (alive.current) setLast(result);
    await reread();
  }, [reread]);

  // As long as this is open, other pages leave what is held alone.
  useEffect(watchUndo, []);
  useEffect(() => {
    alive.current = true;
    void reread().then(sync);
    const timer = setInterval(sync, ROUND_MS);
    const now = () => void sync();
    addEventListener('online', now);
    addEventListener('offline', now);
    addEventListener('focus', now);
    return () => {
      alive.current = false;
      clearInterval(timer);
      removeEventListener('online', now);
      removeEventListener('offline', now);
      removeEventListener('focus', now);
    };
  }, [reread, sync]);

  // What is held for an undo is sent when its time is over.
  const held = state?.outbox.map(({ heldUntilMs }) => heldUntilMs) ?? [];
  const nextMs = held.length === 0 ? undefined : Math.min(...held);
  useEffect(() => {
    if (nextMs === undefined) return;
    const timer = setTimeout(sync, Math.min(ROUND_MS, Math.max(200, nextMs - Date.now() + 50)));
    return () => clearTimeout(timer);
  }, [nextMs, sync]);

  return { state, last, reread, sync };
}
