import fc from 'fast-check';
import { expect, it } from 'vitest';
import { addMonths, isMonth, monthGrid } from '@/lib/due-dates/month-grid';

// source: hand. November 2026 begins on a Sunday: six weeks, 44 to 49. January 2027 begins in week 53 of 2026 (ISO 8601).
it('prints a month with its ISO weeks', () => {
  expect(monthGrid('2026-11').map(({ weekText }) => weekText)).toEqual(
    ['44', '45', '46', '47', '48', '49'].map((week) => `2026-W${week}`),
  );
  expect(monthGrid('2027-01')[0]?.weekText).toBe('2026-W53');
});

// source: identity. Every day of the month stands in it once, weeks are seven days, months go there and back.
it('holds every day once', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1991, max: 2198 }),
      fc.integer({ min: 1, max: 12 }),
      fc.integer({ min: -11, max: 11 }),
      (year, m, by) => {
        const month = `${year}-${String(m).padStart(2, '0')}`;
        const grid = monthGrid(month);
        const inside = grid.flatMap(({ days }) =>
          days.filter(({ inMonth }) => inMonth).map(({ day }) => day),
        );
        expect(inside).toHaveLength(new Date(Date.UTC(year, m, 0)).getUTCDate());
        expect(new Set(inside).size).toBe(inside.length);
        for (const { days } of grid)
          expect(days.some(({ inMonth }) => inMonth) && days.length === 7).toBe(true);
        expect(addMonths(addMonths(month, by), -by)).toBe(month);
      },
    ),
  );
});

// source: hand. What is no month is refused.
it('refuses what is no month', () => {
  for (const text of ['2026-00', '2026-13', '1989-01', '26-01', '2026-1', ''])
    expect(isMonth(text)).toBe(false);
  expect(() => monthGrid('2026-13')).toThrow(/no month|not a month/);
});
