import { expect, it } from 'vitest';
import { dayLabel, monthLabel, relativeDayText } from '@/lib/calendar/day-text';

// source: hand. The months of the year in order.
it('monthLabel names the month and the year', () => {
  expect(monthLabel('2026-03-14')).toBe('March 2026');
  expect(monthLabel('2025-12-01')).toBe('December 2025');
  expect(monthLabel('2025-01-31')).toBe('January 2025');
});

// source: hand.
it('dayLabel never writes the month as a number', () => {
  expect(dayLabel('2026-03-04')).toBe('4 Mar 2026');
});

// source: hand. 1 March to 13 March is 12 days; 1 March back to 23 February, not a leap year, is 6 days.
it.each([
  ['2026-03-13', 'in 12 days'],
  ['2026-03-02', 'tomorrow'],
  ['2026-03-01', 'today'],
  ['2026-02-28', 'yesterday'],
  ['2026-02-23', '6 days ago'],
  ['2026-03-03', 'in 2 days'],
])('%s seen from 2026-03-01 is "%s"', (day, text) => {
  expect(relativeDayText(day, '2026-03-01')).toBe(text);
});

it('throws on what is not a day', () => {
  expect(() => monthLabel('2026-13-01')).toThrow('invariant broken');
});
