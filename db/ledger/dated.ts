import { dayOfMs } from '../../lib/calendar/day';
import type { Env } from './ledger';

/** The content of an entry with its day, and what of it the device sent. */
export interface Dated<C extends object> {
  readonly payload: C & { readonly onDay: string };
  /** Without the day where the device named none: sent again after midnight it is still the same entry. */
  readonly sent: object;
}

/**
 * Content of the day that was named, or else of the shop's day on which the device made the entry: by the device's clock,
 * but never later than now. (The shop's clock is taken as it stands now: an entry sent a change to or from summer time
 * later, and made within an hour of midnight, may fall on the day beside it.)
 */
export function dated<C extends object>(
  content: C,
  { onDay, deviceAtMs }: { readonly onDay?: string | undefined; readonly deviceAtMs: number },
  { nowMs, utcOffsetMinutes = 0 }: Env,
): Dated<C> {
  if (onDay !== undefined) return { payload: { ...content, onDay }, sent: { ...content, onDay } };
  const deviceDay = dayOfMs(Math.min(deviceAtMs, nowMs), utcOffsetMinutes);
  return { payload: { ...content, onDay: deviceDay }, sent: content };
}
