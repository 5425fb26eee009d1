import 'server-only';
import { dayOfMs } from '@/lib/calendar';

/** The server's clock, the only one that puts entries in order. */
export function nowMs(): number {
  return Date.now();
}

/** Minutes by which the shop's wall clock is ahead of UTC: the shop is where its server is. */
export function utcOffsetMinutes(atMs: number): number {
  return -new Date(atMs).getTimezoneOffset();
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
