import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addDays,
  compareDays,
  dayNumber,
  dayOfMs,
  dayOfNumber,
  daysBetween,
  isDay,
} from '@/lib/calendar/day';

// source: published. ISO 8601 and the Gregorian rule: 2000 is a leap year, 1900 is not.
it.each([
  ['2026-11-25', true],
  ['2000-02-29', true],
  ['1900-02-29', false],
  ['2026-02-29', false],
  ['2026-04-31', false],
  ['2026-13-01', false],
  ['2026-00-10', false],
  ['2026-01-00', false],
  ['0000-01-01', false],
  ['2026-1-1', false],
  ['26-01-01', false],
  ['2026-01-01T00:00', false],
  ['2026-01-01\n', false],
  ['', false],
])('isDay(%j) is %s', (text, expected) => {
  expect(isDay(text)).toBe(expected);
});

// source: other-software. Python 3.11.2: date.fromisoformat(d).toordinal() - date(1970, 1, 1).toordinal().
it.each([
  ['1970-01-01', 0],
  ['2004-12-31', 12783],
  ['2000-02-29', 11016],
  ['1900-02-28', -25509],
  ['1600-03-01', -135080],
  ['2100-02-28', 47540],
  ['0001-01-01', -719162],
  ['9999-12-31', 2932896],
])('dayNumber(%s) is %d, and back', (day, number) => {
  expect(dayNumber(day)).toBe(number);
  expect(dayOfNumber(number)).toBe(day);
});

// source: other-software. Python 3.11.2: date(2026, 1, 31) + timedelta(400); date(2024, 2, 29) + timedelta(-366).
it('addDays crosses months and leap years', () => {
  expect(addDays('2026-01-31', 400)).toBe('2027-03-07');
  expect(addDays('2024-02-29', -366)).toBe('2023-02-28');
});

// source: identity. The JavaScript engine's own UTC calendar, independent of ours, over nine thousand years.
it('agrees with the engine’s UTC calendar', () => {
  fc.assert(
    fc.property(fc.integer({ min: -354_285, max: 2_932_896 }), (number) => {
      expect(dayOfNumber(number)).toBe(new Date(number * 86_400_000).toISOString().slice(0, 10));
      expect(dayNumber(dayOfNumber(number))).toBe(number);
    }),
    { numRuns: 2000 },
  );
});

// source: identity. The engine's calendar again, at the turn of February in every year from 1 to 9999: each leap rule.
it('knows every leap year', () => {
  const wrong: number[] = [];
  for (let year = 1; year <= 9999; year += 1) {
    const text = String(year).padStart(4, '0');
    const engine = new Date(0);
    engine.setUTCFullYear(year, 1, 29);
    const leap = engine.getUTCMonth() === 1;
    const march = dayNumber(`${text}-03-01`);
    const first = new Date(0).setUTCFullYear(year, 2, 1) / 86_400_000;
    const lastOfFebruary = leap ? `${text}-02-29` : `${text}-02-28`;
    const right =
      isDay(`${text}-02-29`) === leap &&
      march === first &&
      dayOfNumber(first) === `${text}-03-01` &&
      dayOfNumber(first - 1) === lastOfFebruary;
    if (!right) wrong.push(year);
  }
  expect(wrong).toEqual([]);
});

// source: identity. Adding and taking away; order of text is order of days.
it('addDays, daysBetween and compareDays agree', () => {
  const number = fc.integer({ min: -300_000, max: 1_000_000 });
  fc.assert(
    fc.property(number, fc.integer({ min: -5000, max: 5000 }), (start, days) => {
      const day = dayOfNumber(start);
      const later = addDays(day, days);
      expect(daysBetween(day, later)).toBe(days);
      expect(compareDays(day, later)).toBe(day === later ? 0 : day < later ? -1 : 1);
    }),
  );
});

describe('dayOfMs', () => {
  // source: other-software. Python 3.11.2: datetime.fromtimestamp(1767225599, tz) is 2025-12-31 23:59:59 in UTC and 2026-01-01 00:59:59 at +60 min.
  it('puts an instant on the day of its offset', () => {
    expect(dayOfMs(1_767_225_599_000)).toBe('2025-12-31');
    expect(dayOfMs(1_767_225_599_000, 60)).toBe('2026-01-01');
  });

  // source: hand. Midnight begins a day; a millisecond before is the day before, also before 1970; −300 min is five hours west.
  it('begins the day at midnight', () => {
    expect(dayOfMs(0)).toBe('1970-01-01');
    expect(dayOfMs(-1)).toBe('1969-12-31');
    expect(dayOfMs(0, -300)).toBe('1969-12-31');
  });
});

it('throws on what is not a day: a bug, the door has checked', () => {
  expect(() => addDays('2026-02-30', 1)).toThrow('invariant broken: "2026-02-30" is not a day');
  expect(() => addDays('9999-12-31', 1)).toThrow('invariant broken');
  expect(() => addDays('2026-01-01', 0.5)).toThrow('invariant broken');
  expect(() => dayOfMs(Number.NaN)).toThrow('invariant broken');
});
