import { type Day, dayOfMs } from '../calendar/day';

/**
 * The shop's calendar day of an entry: the one written in it, by the shop's own clock. Entries from before a day was
 * written down have only the server's moment, and count as of its UTC day, as they always did.
 *
 * @example entryDay({}, { serverAtMs: 86399999 }) // => "1970-01-01"
 * @example entryDay({ onDay: '1970-01-01' }, { serverAtMs: 86400000 }) // => "1970-01-01"
 */
export function entryDay(
  { onDay }: { readonly onDay?: Day | undefined },
  { serverAtMs }: { readonly serverAtMs: number },
): Day {
  return onDay ?? dayOfMs(serverAtMs);
}
