import { describe, expect, it } from 'vitest';
import { arrivalDayAt, firmArrivalDay } from '@/lib/capability/arrival-day';
import { arrival, TODAY } from '../../support/plan-shop';

const NEVER = Number.POSITIVE_INFINITY;

describe('arrivalDayAt', () => {
  // source: hand. Ten draws, today is 2 March: nine of them come by day 9 (11 March), all but one never.
  it('is the day by which the stated share of draws has come', () => {
    const days = [1, 2, 3, 4, 5, 6, 7, 8, 9, NEVER];
    expect(arrivalDayAt(days, 0.9, TODAY)).toBe('2026-03-11');
    expect(arrivalDayAt(days, 0.5, TODAY)).toBe('2026-03-07');
    expect(arrivalDayAt(days, 0.95, TODAY)).toBeNull();
  });

  // source: identity. What has come already is here today, never in the past.
  it('is never before today', () => {
    expect(arrivalDayAt([-4, -3], 1, TODAY)).toBe(TODAY);
  });
});

// source: hand. A late order with no drawn day has no date; with drawn days it has.
it('firmArrivalDay takes the drawn days before the stated one', () => {
  const late = arrival('die', { expectedOnDay: '2026-02-20' });
  expect(firmArrivalDay(late, 0.9, TODAY)).toBeNull();
  expect(firmArrivalDay({ ...late, arrivalDayDraws: [3, 3] }, 0.9, TODAY)).toBe('2026-03-05');
  expect(firmArrivalDay(arrival('die'), 0.9, TODAY)).toBe('2026-03-20');
});
