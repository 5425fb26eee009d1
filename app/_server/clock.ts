import 'server-only';
import { utcOffsetMinutes, wallClock } from '@/db/wall-clock';
import { dayOfMs } from '@/lib/calendar';

/** The server's clock, the only one that puts entries in order. */
export function nowMs(): number {
  return wallClock().nowMs;
}

/** The shop's calendar day at a moment. */
export function dayAt(atMs: number): string {
  return dayOfMs(atMs, utcOffsetMinutes(atMs));
}

/** Today in the shop. */
export function today(): string {
  return dayAt(nowMs());
}

/** The shop's time zone, for printing moments. */
export function timeZone(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone;
}
