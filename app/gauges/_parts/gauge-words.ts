import { count, dueText, inDays, whole } from '@/app/_shared/format';
import { daysBetween } from '@/lib/calendar/day';
import type { DueStanding } from '@/lib/gauge/due';
import type { GaugeInterval } from '@/lib/shop/gauge-entry';
import type { ToolState } from '@/lib/shop/vocabulary';

/** What a gauge may be used for now, in three words that everyone reads the same. */
export type MayAccept = 'yes' | 'soon' | 'no';

/** Whether ends may be accepted with it: in the shop's hands, not set aside, in date, ends left. */
export function mayAccept({ state }: { readonly state: ToolState }, { standing }: DueStanding): MayAccept {
  if (state !== 'in-crib' && state !== 'issued') return 'no';
  if (standing === 'in-date') return 'yes';
  return standing === 'due-soon' ? 'soon' : 'no';
}

/** The mark beside it: word first. */
export function acceptWord(state: ToolState, { standing }: DueStanding): string {
  if (state === 'quarantined') return 'set aside';
  if (state === 'calibration') return 'at the laboratory';
  if (state === 'lost') return 'lost';
  const words: Record<DueStanding['standing'], string> = {
    none: 'no calibration',
    overdue: 'overdue',
    'ends-used': 'ends used up',
    'due-soon': 'due soon',
    'in-date': 'in date',
  };
  return words[standing];
}

/** When it is due: the day with the end-of-day rule, and the ends where they are counted. */
export function dueWords(dueOnDay: string | null, { endsLeft }: DueStanding, today: string): string {
  const days = dueOnDay === null ? 'no due day' : dueText(dueOnDay, today);
  if (endsLeft === null) return days;
  return `${days}, or ${endsLeft === 0 ? 'now: its ends are used up' : `after ${count(endsLeft, 'more end')}`}`;
}

/** How long its calibration is good for: "274 days or 700 ends". */
export function intervalWords(interval: GaugeInterval | null): string {
  if (interval === null) return 'not set';
  const days = interval.intervalDays === null ? [] : [count(interval.intervalDays, 'day')];
  const ends = interval.intervalEnds === null ? [] : [count(interval.intervalEnds, 'end')];
  return [...days, ...ends].join(' or ');
}

/** The interval somebody set, or the one that the last certificate tells. */
export function intervalInForce(gauge: {
  readonly interval: GaugeInterval | null;
  readonly calibratedOnDay: string | null;
  readonly dueOnDay: string | null;
}): string {
  const { interval, calibratedOnDay, dueOnDay } = gauge;
  if (interval !== null) return intervalWords(interval);
  if (calibratedOnDay === null || dueOnDay === null) return 'not set';
  return `${count(daysBetween(calibratedOnDay, dueOnDay), 'day')} by its certificate`;
}

/** A number of days as one speaks of intervals: "about 12 months". */
export function monthsWords(days: number): string {
  if (days < 75) return count(days, 'day');
  return `${count(days, 'day')}, about ${whole(Math.floor(days / 30.44 + 0.25))} months`;
}

/** Until when it carries work: for the sentence beside a job. */
export function untilWords(day: string, today: string): string {
  return day < today ? `since the end of ${inDays(day, today)}` : `to the end of ${inDays(day, today)}`;
}
