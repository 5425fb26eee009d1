import fc from 'fast-check';
import { expect, it } from 'vitest';
import { addDays } from '@/lib/calendar/day';
import { dueStanding, endsUsedUpOnDay, isInDate, usableToDay } from '@/lib/gauge/due';

const TODAY = '2026-03-14';
const gauge = (dueOnDay: string | null, intervalEnds: number | null = null, endsSince = 0) => ({
  ...{ dueOnDay, endsSince, interval: intervalEnds === null ? null : { intervalEnds } },
});

// source: hand. Due on the 14th: good all through the 14th, overdue on the 15th.
it.each([
  ['2026-03-13', 'overdue', -1],
  ['2026-03-14', 'due-soon', 0],
  ['2026-03-28', 'due-soon', 14],
  ['2026-03-29', 'in-date', 15],
])('due %s on the 14th: %s', (dueOnDay, standing, daysLeft) => {
  expect(dueStanding(gauge(dueOnDay), TODAY)).toEqual({ standing, daysLeft, endsLeft: null });
});

// source: hand. Days or ends, whichever comes first.
it.each([
  ['2027-01-01', 500, 0, 'in-date', 500],
  ['2027-01-01', 500, 449, 'in-date', 51],
  ['2027-01-01', 500, 450, 'due-soon', 50],
  ['2027-01-01', 500, 500, 'ends-used', 0],
  ['2027-01-01', 500, 900, 'ends-used', 0],
  ['2026-03-13', 500, 0, 'overdue', 500],
])('due %s and %s ends, %s since: %s', (dueOnDay, ends, since, standing, endsLeft) => {
  expect(dueStanding(gauge(dueOnDay, ends, since), TODAY)).toMatchObject({ standing, endsLeft });
});

it('without a due day it is not in date', () => {
  expect(dueStanding(gauge(null), TODAY).standing).toBe('none');
  expect(isInDate(gauge(null), TODAY)).toBe(false);
});

// source: hand. The plan knows days: used-up ends end its use before today.
it('says to the plan until when', () => {
  expect(usableToDay(gauge('2027-01-01', 500, 10), TODAY)).toBe('2027-01-01');
  expect(usableToDay(gauge('2027-01-01', 500, 500), TODAY)).toBe('2026-03-13');
  expect(usableToDay(gauge('2026-03-01', 500, 500), TODAY)).toBe('2026-03-01');
  expect(usableToDay(gauge(null, 500, 500), TODAY)).toBeNull();
});

// source: hand. 10 ends on 16 and 17 March, 5 a day: 5 are used up on the 16th, 6 and 10 on the 17th, 11 never.
it.each([
  [5, '2026-03-16'],
  [6, '2026-03-17'],
  [10, '2026-03-17'],
  [11, null],
  [0, TODAY],
])('%s ends left are used up on %s', (left, day) => {
  const planned = [{ ends: 10, fromDay: '2026-03-16', toDay: '2026-03-17' }];
  expect(endsUsedUpOnDay(left, planned, TODAY)).toBe(day);
});

it('work that should have begun falls on today, and is not lost', () => {
  const planned = [{ ends: 10, fromDay: '2026-03-01', toDay: '2026-03-02' }];
  expect(endsUsedUpOnDay(10, planned, TODAY)).toBe(TODAY);
});

// source: identity. More ends left never run out sooner; more work never makes them last longer.
it('is monotone', () => {
  const line = fc.record({ ends: fc.integer({ min: 1, max: 40 }), from: fc.nat(20), days: fc.nat(9) });
  fc.assert(
    fc.property(
      fc.array(line, { minLength: 1, maxLength: 5 }),
      fc.integer({ min: 1, max: 60 }),
      (lines, left) => {
        const planned = lines.map(({ ends, from, days }) => ({
          ...{ ends, fromDay: addDays(TODAY, from), toDay: addDays(TODAY, from + days) },
        }));
        const on = (n: number, work = planned) => endsUsedUpOnDay(n, work, TODAY) ?? '9999-12-31';
        expect(on(left + 3) >= on(left)).toBe(true);
        expect(on(left, planned.slice(1)) >= on(left)).toBe(true);
      },
    ),
  );
});
