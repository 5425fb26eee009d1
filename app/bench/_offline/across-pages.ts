'use client';

/** Names that every page of this browser asks for, whichever tab it is in. */
const SENDING = 'edgekeep-bench-sending';
const UNDO = 'edgekeep-bench-undo';
/** Longer than a round takes. Whoever has waited so long stands behind a page that the browser has put to sleep. */
const TURN_PATIENCE_MS = 20_000;

/** Browsers have these at https and on this very machine only. */
function browserLocks(): LockManager | undefined {
  return typeof navigator === 'undefined' ? undefined : navigator.locks;
}

/**
 * Does the work while no other page of this browser does such work. Without locks, or after waiting too long, it is done all
 * the same: two pages may then send one entry side by side, and the server counts it once.
 */
export async function inTurn<T>(work: () => Promise<T>, patienceMs = TURN_PATIENCE_MS): Promise<T> {
  const locks = browserLocks();
  if (locks === undefined) return work();
  let begun = false;
  const begin = () => {
    begun = true;
    return work();
  };
  try {
    return await locks.request(SENDING, { signal: AbortSignal.timeout(patienceMs) }, begin);
  } catch (error) {
    if (begun) throw error;
    return work();
  }
}

/** Says to the other pages of this browser that Undo can be pressed here, until what it gives back is called or the page goes. */
export function watchUndo(): () => void {
  let leave = () => {};
  const left = new Promise<void>((resolve) => {
    leave = resolve;
  });
  // Refused only where nobody can ask either.
  browserLocks()
    ?.request(UNDO, { mode: 'shared' }, () => left)
    .catch(() => undefined);
  return leave;
}

/** Whether a bench is open in any page of this browser, so that Undo may still be pressed. Yes, where that cannot be known. */
export async function undoIsPossible(): Promise<boolean> {
  try {
    const asked = await browserLocks()?.query();
    if (asked === undefined) return true;
    return [...(asked.held ?? []), ...(asked.pending ?? [])].some(({ name }) => name === UNDO);
  } catch {
    return true;
  }
}
