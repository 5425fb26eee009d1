import { addDays, type Day } from '../calendar/day';

/** The days of a bottle that its life depends on. */
export interface BottleDays {
  /** Shelf life: as on the container. */
  readonly expiresOnDay: Day | null;
  readonly openedOnDay: Day | null;
  /** Days that the fluid keeps once opened; null where nobody has written it down. */
  readonly openedLifeDays: number | null;
  /** The day to which an inspection has lengthened its life. */
  readonly extendedUntilDay?: Day | null | undefined;
}

/** Which life ends first, and the day to the end of which the fluid may be used. */
export interface UseBy {
  readonly onDay: Day | null;
  readonly by: 'shelf life' | 'opened life' | 'extension' | null;
}

/**
 * The day to the end of which a fluid may be used, and why: the earlier of shelf life and opened life, or the day to which
 * an inspection has lengthened it. `asLabelled` leaves extensions out, for work on which none counts (oxygen).
 * Source: shelf life and life in service both count (DoDM 4140.27).
 */
export function bottleUseBy(days: BottleDays, { asLabelled = false } = {}): UseBy {
  const { expiresOnDay, openedOnDay, openedLifeDays, extendedUntilDay = null } = days;
  const openedEnds =
    openedOnDay === null || openedLifeDays === null ? null : addDays(openedOnDay, openedLifeDays);
  const labelled: UseBy =
    openedEnds !== null && (expiresOnDay === null || openedEnds <= expiresOnDay)
      ? { onDay: openedEnds, by: 'opened life' }
      : { onDay: expiresOnDay, by: expiresOnDay === null ? null : 'shelf life' };
  if (asLabelled || extendedUntilDay === null || labelled.onDay === null) return labelled;
  return extendedUntilDay > labelled.onDay ? { onDay: extendedUntilDay, by: 'extension' } : labelled;
}

/**
 * Whether the fluid is past its day: usable to the end of it. Never, where no day is on record.
 * @example isOverLife({ onDay: '2026-03-31', by: 'shelf life' }, '2026-04-01') // => true
 */
export function isOverLife({ onDay }: UseBy, today: Day): boolean {
  return onDay !== null && onDay < today;
}
