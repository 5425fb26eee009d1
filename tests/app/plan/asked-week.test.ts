import { expect, it } from 'vitest';
import { askedWeek } from '@/app/plan/week/_parts/asked-week';

// source: published. ISO 8601: week 1 holds 4 January; 2026 has 53 weeks, 2027 has 52. What is no week is this week.
it.each([
  ['2026-W48', '2026-11-23'],
  ['2026-W53', '2026-12-28'],
  ['2027-W01', '2027-01-04'],
  ['2027-W53', '2026-11-23'],
  ['2026-W00', '2026-11-23'],
  ['soon', '2026-11-23'],
  [undefined, '2026-11-23'],
])('%s begins on %s', (asked, monday) => {
  expect(askedWeek(asked, '2026-11-25')).toBe(monday);
});
