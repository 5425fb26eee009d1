import type { Route } from 'next';
import { DUE_KINDS, type DueKind } from '@/lib/due-dates/due-date';

/** The address of a month with its filter; all kinds need none. */
export function calendarHref(month: string | undefined, kinds: readonly DueKind[]): Route {
  const query = filterQuery(kinds);
  if (month !== undefined) query.set('month', month);
  const text = query.toString();
  return (text === '' ? '/calendar' : `/calendar?${text}`) as Route;
}

/** The address of the feed with the same filter. */
export function feedHref(kinds: readonly DueKind[]): string {
  const text = filterQuery(kinds).toString();
  return text === '' ? '/calendar/feed.ics' : `/calendar/feed.ics?${text}`;
}

function filterQuery(kinds: readonly DueKind[]): URLSearchParams {
  const query = new URLSearchParams();
  if (kinds.length < DUE_KINDS.length) for (const kind of kinds) query.append('kind', kind);
  return query;
}
