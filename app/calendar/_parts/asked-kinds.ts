import { DUE_KINDS, type DueKind } from '@/lib/due-dates/due-date';

/** The kinds that an address asks for (?kind=calibration&kind=…); all of them where it names none that there is. */
export function askedKinds(asked: string | readonly string[] | undefined): readonly DueKind[] {
  const named = asked === undefined ? [] : typeof asked === 'string' ? [asked] : asked;
  const known = DUE_KINDS.filter((kind) => named.includes(kind));
  return known.length === 0 ? DUE_KINDS : known;
}
