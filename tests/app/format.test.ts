import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chanceWords,
  count,
  dayText,
  dueText,
  ends,
  endsWithUnit,
  estimatedMoney,
  exposureText,
  floorEnds,
  fractionSpoken,
  inches,
  inchParts,
  inDays,
  lengthText,
  listWords,
  momentText,
  money,
  percent,
  share,
  sizeName,
  timesText,
  whole,
} from '@/app/_shared/format';

const THIN = '\u202f';

// source: hand. The rounding rules are the house's own; the expected words follow from them by hand.
describe('counts and estimates', () => {
  it('prints counts exactly and in the right number', () => {
    expect([0, 1, 24].map((n) => count(n, 'end'))).toEqual(['0 ends', '1 end', '24 ends']);
    expect(count(2, 'cubic inch', 'cubic inches')).toBe('2 cubic inches');
  });
  it('groups from five digits on, with a true minus', () => {
    expect(whole(9999)).toBe('9999');
    expect(whole(12400)).toBe(`12${THIN}400`);
    expect(whole(-1234567)).toBe(`\u22121${THIN}234${THIN}567`);
    expect(whole(-0.2)).toBe('0');
  });
  it('floors an estimate and never prints a decimal', () => {
    expect(ends(34.99)).toBe('about 34');
    expect(ends(0.9)).toBe('none');
    expect(ends(-3)).toBe('none');
    expect(ends(159)).toBe('about 150');
    expect(ends(2599)).toBe('about 2500');
    expect(ends(Number.POSITIVE_INFINITY)).toBe('not known');
    expect(endsWithUnit(1.2)).toBe('about 1 end');
    expect(endsWithUnit(0)).toBe('no ends');
    expect(endsWithUnit(20, 'thread')).toBe('about 20 threads');
  });
  // source: identity. Rounding down can never promise more than was estimated.
  it('never promises more than the estimate', () => {
    fc.assert(fc.property(fc.double({ min: 0, max: 1e6, noNaN: true }), (x) => floorEnds(x) <= x));
  });
});

// source: hand. Same reason.
describe('chance', () => {
  it('speaks in tenths and keeps clear of certainty', () => {
    expect(chanceWords(1)).toBe('better than 99 in 100');
    expect(chanceWords(0.96)).toBe('better than 19 in 20');
    expect(chanceWords(0.91)).toBe('better than 9 in 10');
    expect(chanceWords(0.899)).toBe('about 9 in 10');
    expect(chanceWords(0.7)).toBe('about 7 in 10');
    expect(chanceWords(0.5)).toBe('about even');
    expect(chanceWords(0.05)).toBe('about 1 in 10');
    expect(chanceWords(0.02)).toBe('less than 1 in 20');
    expect(chanceWords(0)).toBe('less than 1 in 100');
    expect(chanceWords(Number.NaN)).toBe('not known');
  });
  it('prints per cent in honest steps', () => {
    expect(percent(0.703)).toBe(`70${THIN}%`);
    expect(percent(0.934)).toBe(`93${THIN}%`);
    expect(percent(0.04)).toBe(`4${THIN}%`);
    expect(percent(1)).toBe(`over 99${THIN}%`);
    expect(percent(0)).toBe(`under 1${THIN}%`);
    expect(share(963, 1000)).toBe(`96${THIN}%`);
    expect(share(0, 0)).toBe('no entries yet');
  });
  // source: identity. A probability is never printed as 0 % or 100 %.
  it('never says 0 or 100 per cent', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (p) => !/^(0|100)\u202f%$/.test(percent(p))),
    );
  });
});

describe('sizes and lengths', () => {
  // source: published. Tube sizes of TRADE table 4.1: 1/4, 3/8, 9/16, 3/4 and 1 in; thread lengths 25/32 and 15/16 in.
  it('prints true fractions', () => {
    expect([0.25, 0.375, 0.5625, 0.75, 1, 25 / 32].map((x) => inches(x))).toEqual([
      '1⁄4',
      '3⁄8',
      '9⁄16',
      '3⁄4',
      '1',
      '25⁄32',
    ]);
    expect(sizeName(0.5625, 'high')).toBe('9⁄16 high pressure');
    expect(inches(0.281)).toBe('0.281');
    expect(inches(1.125)).toBe('1 1⁄8');
    expect(inchParts(-1)).toBeNull();
  });
  // source: identity. A fraction's parts give back the length.
  it('loses nothing on the way', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 640 }), (n) => {
        const parts = inchParts(n / 64);
        return parts !== null && parts.whole + parts.num / parts.den === n / 64;
      }),
    );
  });
  // source: published. 1 in = 25.4 mm exactly (ISO 80000-3); 15/16 in = 23.8125 mm, 9/16 HP is 23.8 in TRADE table 4.1.
  it('prints mm and inches of one length', () => {
    expect(lengthText(23.8125, 'mm')).toBe('23.8 mm');
    expect(lengthText(23.8125, 'in')).toBe('15⁄16 in');
    expect(lengthText(7, 'in')).toBe('0.276 in');
  });
  // source: hand.
  it('speaks fractions', () => {
    expect(fractionSpoken(9, 16)).toBe('9 sixteenths');
    expect(fractionSpoken(1, 4)).toBe('1 quarter');
    expect(fractionSpoken(3, 7)).toBe('3 over 7');
  });
});

describe('days', () => {
  const today = '2026-11-25';
  // source: other-software. `date -d 2026-12-07 +%a` (GNU coreutils) gives Mon; 2026-11-25 Wed; 2027-01-04 Mon.
  it('names days', () => {
    expect(dayText('2026-12-07', today)).toBe('Mon 7 Dec');
    expect(dayText('2027-01-04', today)).toBe('Mon 4 Jan 2027');
    expect(dayText('2026-11-25')).toBe('Wed 25 Nov 2026');
    expect(dayText('soon', today)).toBe('no date');
  });
  // source: hand. Calendar arithmetic: 25 Nov + 12 days = 7 Dec.
  it('counts days from today', () => {
    expect(inDays('2026-12-07', today)).toBe('in 12 days, Mon 7 Dec');
    expect(inDays('2026-11-25', today)).toBe('today, Wed 25 Nov');
    expect(inDays('2026-11-26', today)).toBe('tomorrow, Thu 26 Nov');
    expect(inDays('2026-11-22', today)).toBe('3 days ago, Sun 22 Nov');
    expect(dueText('2026-11-20', today)).toBe('5 days overdue, was due Fri 20 Nov');
    expect(dueText('2026-11-26', today)).toBe('due tomorrow, Thu 26 Nov');
    expect(dueText('', today)).toBe('no due date');
  });
  // source: other-software. `date -d '2026-11-25 +1009 days' '+%a %F'` (GNU coreutils) gives Thu 2029-08-30; +92 Thu 2027-02-25,
  // +93 Fri 2027-02-26, +2000 Mon 2032-05-17, -400 Tue 2025-10-21. Months and years by hand: 1009 × 12 ÷ 365 = 33.2.
  it('says a long stretch in months and years, with its day', () => {
    expect(inDays('2027-02-25', today)).toBe('in 92 days, Thu 25 Feb 2027');
    expect(inDays('2027-02-26', today)).toBe('in 3 months, Fri 26 Feb 2027');
    expect(dueText('2029-08-30', today)).toBe('due in 33 months, Thu 30 Aug 2029');
    expect(inDays('2032-05-17', today)).toBe('in 5 years, Mon 17 May 2032');
    expect(dueText('2025-10-21', today)).toBe('13 months overdue, was due Tue 21 Oct 2025');
  });
  // source: other-software. `TZ=Europe/Oslo date -d @1764075900` (GNU coreutils): Tue 25 Nov 2025 14:05.
  it('prints a moment in the shop’s own time zone', () => {
    expect(momentText(1_764_075_900_000, 'Europe/Oslo')).toBe('Tue 25 Nov 2025, 14:05');
  });
});

describe('money and exposure', () => {
  // source: hand. Three figures say all that an estimate knows; below a hundred the cents are the third figure.
  it.each([
    [10_727, 'USD', 3, '$107'],
    [366_951, 'USD', 3, '$3,670'],
    [366_951, 'USD', 2, '$3,700'],
    [637, 'USD', 3, '$6.37'],
    [9_996, 'EUR', 3, '€99.96'],
    [-10_727, 'USD', 3, '-$107'],
    [12_518, 'JPY', 3, '¥12,500'],
    [0, 'USD', 3, '$0.00'],
  ] as const)('%s minor units of %s to %s figures', (minor, currency, figures, text) => {
    expect(estimatedMoney(minor, currency, figures)).toBe(text);
  });

  // source: published. ISO 4217: EUR has two minor digits, JPY none.
  it('prints minor units', () => {
    expect(money(12500, 'EUR')).toBe('€125.00');
    expect(money(12500, 'JPY')).toBe('¥12,500');
  });
  // source: hand. 12 400 mm³ = 12.4 cm³.
  it('prints exposure in the shop’s measure', () => {
    expect(exposureText('die', 430)).toBe('430 turns');
    expect(exposureText('blade', 422)).toBe('422 mm³');
    expect(exposureText('blade', 12400)).toBe('12.4 cm³');
    expect(timesText(1.9)).toBe('1.9×');
  });
  // source: hand.
  it('joins words', () => {
    expect([[], ['a'], ['a', 'b'], ['a', 'b', 'c']].map((w) => listWords(w))).toEqual([
      '',
      'a',
      'a and b',
      'a, b and c',
    ]);
  });
});
