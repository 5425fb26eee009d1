import ical, { ICalEventTransparency } from 'ical-generator';
import { DUE_KIND_LABEL, dueBand, dueHref, dueTitle } from '@/app/_shared/words/due-words';
import { addDays, dayNumber } from '@/lib/calendar';
import type { DueDate } from '@/lib/due-dates/due-date';

interface FeedInput {
  readonly dues: readonly DueDate[];
  readonly today: string;
  /** Name of the shop's file: keeps the events of two shops apart. */
  readonly shop: string;
  /** How many entries the record has, and when the last was made. */
  readonly version: number;
  readonly versionAtMs: number;
  /** Address under which this server is read, for links back. */
  readonly origin: string;
}

const DAY_MS = 86_400_000;
const REFRESH_SECONDS = 3600;

/**
 * The due dates as an iCalendar feed (RFC 5545): one all-day event each, the day after as its end, the same UID as long as
 * it is the same thing. SEQUENCE rises with every entry and every day, since an estimated day moves with both; DTSTAMP is
 * the moment of the last entry. No METHOD, no alarm, no names of persons.
 */
export function feedText({ dues, today, shop, version, versionAtMs, origin }: FeedInput): string {
  const calendar = ical({
    name: 'Edgekeep due dates',
    prodId: { company: 'Edgekeep', product: 'Due dates', language: 'EN' },
    ttl: REFRESH_SECONDS,
  });
  const sequence = version + dayNumber(today);
  const stamp = new Date(versionAtMs);
  for (const due of dues) {
    calendar.createEvent({
      ...{ id: `${due.id}@${shop}.edgekeep`, sequence, stamp },
      ...{ start: dateOf(due.onDay), end: dateOf(addDays(due.onDay, 1)), allDay: true },
      summary: dueTitle(due),
      description: dueBand(due, today) || null,
      url: `${origin}${dueHref(due)}`,
      categories: [{ name: DUE_KIND_LABEL[due.kind] }],
      transparency: ICalEventTransparency.TRANSPARENT,
    });
  }
  // The library leaves the last line open; RFC 5545 §3.1 ends every line.
  return `${calendar.toString().replace(/(?:\r\n)+$/, '')}\r\n`;
}

/** Midnight UTC, which is how the library takes a day. */
function dateOf(day: string): Date {
  return new Date(dayNumber(day) * DAY_MS);
}
