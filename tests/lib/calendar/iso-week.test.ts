import fc from 'fast-check';
import { expect, it } from 'vitest';
import { addDays, dayOfNumber } from '@/lib/calendar/day';
import { isoWeek, isoWeekday, isoWeekText, weekStartDay } from '@/lib/calendar/iso-week';

// source: other-software. Python 3.11.2: date.fromisoformat(d).isocalendar().
it.each([
  ['2004-12-31', 2004, 53, 5],
  ['2005-01-02', 2004, 53, 7],
  ['2008-12-28', 2008, 52, 7],
  ['2008-12-29', 2009, 1, 1],
  ['2010-01-03', 2009, 53, 7],
  ['2010-01-04', 2010, 1, 1],
  ['2020-12-31', 2020, 53, 4],
  ['2021-01-03', 2020, 53, 7],
  ['2026-01-01', 2026, 1, 4],
  ['2026-12-31', 2026, 53, 4],
  ['1900-02-28', 1900, 9, 3],
])('%s is week %d-W%d, weekday %d', (day, year, week, weekday) => {
  expect(isoWeek(day)).toEqual({ year, week });
  expect(isoWeekday(day)).toBe(weekday);
});

// source: other-software. As above, 2008-12-29.
it('isoWeekText writes the week as the standard does', () => {
  expect(isoWeekText('2008-12-29')).toBe('2009-W01');
});

// source: identity. The Monday is a Monday, at most six days back, and shares the week with its Sunday.
it('a week runs Monday to Sunday', () => {
  fc.assert(
    fc.property(fc.integer({ min: -100_000, max: 100_000 }), (number) => {
      const monday = weekStartDay(dayOfNumber(number));
      expect(isoWeekday(monday)).toBe(1);
      expect(isoWeekText(addDays(monday, 6))).toBe(isoWeekText(dayOfNumber(number)));
      expect(isoWeekText(addDays(monday, 7))).not.toBe(isoWeekText(monday));
    }),
  );
});
