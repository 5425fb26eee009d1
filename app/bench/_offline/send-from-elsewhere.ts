'use client';

import { undoIsPossible } from './across-pages';
import { endHolds, waitingTimes } from './bench-store';
import { isHeld, settledHere, syncBench } from './sync';

/** As often as the bench does by itself. */
const ROUND_MS = 20_000;
/** What is held may be let go as soon as the last bench is left. */
const HELD_LOOK_MS = 1000;

/** How it stands with what was pressed at the bench, seen from another page. */
export interface BenchMail {
  /** Entries on this device that the server has not taken. */
  readonly waiting: number;
  /** Entries that the server took from this page just now. */
  readonly sent: number;
  readonly reached: boolean;
  readonly needsName: boolean;
  /** When to look again, if something waits. */
  readonly lookAgainMs: number;
}

/** Entries on this device that the server has not taken. */
export async function entriesWaiting(): Promise<number> {
  return (await waitingTimes()).length;
}

/**
 * Sends what was pressed at the bench from a page that is not the bench. What is held for its Undo goes at once when no bench
 * is open in this browser: nobody can press it any more. Goes to the server only if something is due.
 */
export async function sendFromElsewhere(): Promise<BenchMail> {
  if ((await entriesWaiting()) > 0 && !(await undoIsPossible())) await endHolds();
  const [first] = await waitingTimes();
  const settledBefore = settledHere();
  const result = first === undefined || isHeld(first) ? undefined : await syncBench();
  const left = await waitingTimes();
  return {
    waiting: left.length,
    sent: settledHere() - settledBefore,
    reached: result?.reached !== false,
    needsName: result?.reached === true && result.needsName,
    lookAgainMs: left.some(isHeld) ? HELD_LOOK_MS : ROUND_MS,
  };
}
