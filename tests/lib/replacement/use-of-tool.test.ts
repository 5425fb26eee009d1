import { expect, it } from 'vitest';
import { dayOfUse } from '@/lib/replacement/use-of-tool';

const today = '2026-03-02';
const all = (value: number) => new Float64Array(10).fill(value);

// source: hand. 100 units over ten days from the day after tomorrow: 50 are spent on day 2 + 5; 150 are 50 beyond, at 10 a day 5 days
// after day 12.
it('spends an edge along the lines and then at the plan’s pace', () => {
  const uses = [{ startOnDay: '2026-03-04', dueOnDay: '2026-03-13', exposure: all(100) }];
  const paced = { today, ratePerDay: all(10) };
  expect(dayOfUse(all(50), uses, paced)).toEqual({ lowDays: 7, medianDays: 7, highDays: 7 });
  expect(dayOfUse(all(150), uses, paced).medianDays).toBe(17);
});

// source: hand. Amounts 10, 20 … 100 at 10 a day: days 1 to 10; the second, sixth and tenth of the ten.
it('gives a band over the draws', () => {
  const amount = Float64Array.from({ length: 10 }, (_, k) => 10 * (k + 1));
  expect(dayOfUse(amount, [], { today, ratePerDay: all(10) })).toEqual({
    lowDays: 2,
    medianDays: 6,
    highDays: 10,
  });
});

// source: hand. Nothing planned: no day; more than a year away: none in sight.
it('names no day that is not in sight', () => {
  expect(dayOfUse(all(5), [], { today, ratePerDay: all(0) }).medianDays).toBeNull();
  expect(dayOfUse(all(5000), [], { today, ratePerDay: all(10) }).medianDays).toBeNull();
});
