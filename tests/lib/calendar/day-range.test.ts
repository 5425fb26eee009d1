import fc from 'fast-check';
import { expect, it } from 'vitest';
import { dayOfNumber } from '@/lib/calendar/day';
import { firstOverdueDay, isPastDue, rangesOverlap, sharedDays } from '@/lib/calendar/day-range';

const range = (fromDay: string, toDay: string) => ({ fromDay, toDay });

// source: hand. Both ends count: 3rd to 5th and 5th to 9th share the 5th.
it('ranges that touch on one day share that day', () => {
  const first = range('2026-03-03', '2026-03-05');
  expect(sharedDays(first, range('2026-03-05', '2026-03-09'))).toBe(1);
  expect(rangesOverlap(first, range('2026-03-05', '2026-03-09'))).toBe(true);
  expect(rangesOverlap(first, range('2026-03-06', '2026-03-09'))).toBe(false);
  expect(sharedDays(first, range('2026-03-01', '2026-03-31'))).toBe(3);
  expect(sharedDays(first, first)).toBe(3);
});

// source: identity. Counting the days one by one, a second way to the same figure.
it('sharedDays equals a count of days, either way round', () => {
  const ends = fc.tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 20 }));
  fc.assert(
    fc.property(ends, ends, ([a, aLength], [b, bLength]) => {
      const one = range(dayOfNumber(a), dayOfNumber(a + aLength));
      const two = range(dayOfNumber(b), dayOfNumber(b + bLength));
      let count = 0;
      for (let day = a; day <= a + aLength; day += 1) if (day >= b && day <= b + bLength) count += 1;
      expect(sharedDays(one, two)).toBe(count);
      expect(sharedDays(two, one)).toBe(count);
      expect(rangesOverlap(one, two)).toBe(count > 0);
    }),
  );
});

// source: hand. End-of-day rule.
it('what is due on a day is good through that day', () => {
  expect(isPastDue('2026-03-14', '2026-03-13')).toBe(false);
  expect(isPastDue('2026-03-14', '2026-03-14')).toBe(false);
  expect(isPastDue('2026-03-14', '2026-03-15')).toBe(true);
  expect(firstOverdueDay('2026-12-31')).toBe('2027-01-01');
});

it('throws on a range that ends before it begins', () => {
  expect(() => sharedDays(range('2026-03-05', '2026-03-04'), range('2026-03-01', '2026-03-02'))).toThrow(
    'invariant broken',
  );
});
