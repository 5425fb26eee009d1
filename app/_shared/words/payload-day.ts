import { isDay } from '@/lib/calendar/day';
import { dayLabel } from '@/lib/calendar/day-text';

/** A day out of an entry's payload, in words; whatever an older entry holds instead stands as it is. */
export function payloadDay(value: unknown): string {
  return typeof value === 'string' && isDay(value) ? dayLabel(value) : String(value);
}
