import fc from 'fast-check';
import { expect, it } from 'vitest';
import { addDays } from '@/lib/calendar/day';
import { arrivalDays } from '@/lib/lead-time/arrival-draws';
import { LEAD_TIME_PRIOR, leadDaysWithin, probabilityWithin } from '@/lib/lead-time/lead-time-belief';

const TODAY = '2026-06-01';
const draws = (over: Partial<Parameters<typeof arrivalDays>[0]> = {}) =>
  arrivalDays({
    key: 'order:PO-1',
    statedOnDay: TODAY,
    expectedOnDay: addDays(TODAY, 20),
    today: TODAY,
    belief: LEAD_TIME_PRIOR,
    receivingDays: 1,
    drawCount: 2048,
    ...over,
  });
const quantile = (values: Int32Array, p: number): number =>
  Int32Array.from(values).sort()[Math.ceil(p * values.length) - 1] ?? Number.NaN;

// source: formula. Placed today: the quantiles of the drawn days are those of the predictive t, plus the receiving day.
it('draws what the belief says of an order placed today', () => {
  const days = draws();
  for (const p of [0.1, 0.5, 0.9]) {
    expect(Math.abs(quantile(days, p) - 1 - leadDaysWithin(LEAD_TIME_PRIOR, 20, p))).toBeLessThanOrEqual(1);
  }
});

// source: formula. Right-censored: of an order 30 days out that was quoted for 20, P(within d more days) is
// (F(30 + d) − F(29.5)) ÷ (1 − F(29.5)).
it('conditions a late order on not having come before today', () => {
  const late = { statedOnDay: addDays(TODAY, -30), expectedOnDay: addDays(TODAY, -10), receivingDays: 0 };
  const days = draws(late);
  expect(Math.min(...days)).toBeGreaterThanOrEqual(0);
  const gone = probabilityWithin(LEAD_TIME_PRIOR, 20, 29.5);
  for (const more of [3, 10, 30]) {
    const within = (probabilityWithin(LEAD_TIME_PRIOR, 20, 30.5 + more) - gone) / (1 - gone);
    const share = days.filter((day) => day <= more).length / days.length;
    expect(Math.abs(share - within)).toBeLessThan(0.003);
  }
});

it('keeps its luck when the date slips, and another order has other luck', () => {
  const before = draws();
  const after = draws({ expectedOnDay: addDays(TODAY, 27) });
  expect(before.every((day, k) => (after[k] ?? 0) >= day)).toBe(true);
  expect([...draws({ key: 'order:PO-2' })]).not.toEqual([...before]);
  expect([...draws()]).toEqual([...before]);
});

// Of an order placed today a later promise never brings it sooner, in any draw. (Of one that is overdue it may: the longer
// past its promise, the more is wrong with it.)
it('is monotone in the day promised', () => {
  const days = fc.integer({ min: 0, max: 90 });
  fc.assert(
    fc.property(days, days, (a, b) => {
      const at = (offset: number) => draws({ expectedOnDay: addDays(TODAY, offset), drawCount: 64 });
      const [sooner, later] = [at(Math.min(a, b)), at(Math.max(a, b))];
      expect(sooner.every((day, k) => day <= (later[k] ?? -1))).toBe(true);
    }),
    { numRuns: 60 },
  );
});

it('never brings an order before today, however late it is', () => {
  const day = fc.integer({ min: -200, max: 60 });
  fc.assert(
    fc.property(day, fc.integer({ min: 0, max: 400 }), (offset, out) => {
      const days = draws({
        statedOnDay: addDays(TODAY, -out),
        expectedOnDay: addDays(TODAY, offset),
        drawCount: 64,
      });
      expect(days.every((at) => at >= 1 && Number.isFinite(at))).toBe(true);
    }),
    { numRuns: 60 },
  );
});
