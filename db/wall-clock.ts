import type { Env } from './ledger/ledger';

/** Minutes by which the wall clock of this machine is ahead of UTC at a moment: the shop is where its server is. */
export function utcOffsetMinutes(atMs: number): number {
  return -new Date(atMs).getTimezoneOffset();
}

/** The clock on the shop's wall now: what every command and every process that needs a day reads. */
export function wallClock(): Required<Env> {
  const nowMs = Date.now();
  return { nowMs, utcOffsetMinutes: utcOffsetMinutes(nowMs) };
}
