import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inTime, needOf, orderByInDays, stoppedDays } from '@/lib/orders/order-by';

const NEVER = Number.POSITIVE_INFINITY;

// source: hand. Need on day 20, 30, 40, never; lead 10, 15, 12, 9: slack 10, 15, 28, never. Three in four: day 15.
it('is the last day that comes in time often enough', () => {
  const timing = { needDays: Float64Array.of(20, 30, 40, NEVER), leadDays: Int32Array.of(10, 15, 12, 9) };
  expect([orderByInDays(timing, 0.75), orderByInDays(timing, 0.9), orderByInDays(timing, 0.25)]).toEqual([
    15,
    10,
    NEVER,
  ]);
  expect([inTime(timing, 15), inTime(timing, 16), inTime(timing, 0)]).toEqual([0.75, 0.5, 1]);
  // Ordered on day 18: late by 8 and 3 days; when it is out: by the whole lead time.
  expect(stoppedDays(timing, 18)).toBe((8 + 3) / 4);
  expect(stoppedDays(timing, 'when-out')).toBe((10 + 15 + 12) / 4);
  expect(needOf(timing.needDays)).toEqual({ probability: 0.75, medianInDays: 30 });
  expect(needOf(Float64Array.of(NEVER))).toEqual({ probability: 0, medianInDays: null });
});

// It is the last such day: on it the share is met, on the next it is not. A longer lead never gives a later day.
it('is exactly the last day, and earlier for a longer lead', () => {
  const days = fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 10, maxLength: 10 });
  fc.assert(
    fc.property(days, days, fc.constantFrom(0.5, 0.8, 0.9), (needs, leads, target) => {
      const timing = { needDays: Float64Array.from(needs), leadDays: leads };
      const by = orderByInDays(timing, target);
      expect(inTime(timing, by)).toBeGreaterThanOrEqual(target - 1e-9);
      expect(inTime(timing, by + 1)).toBeLessThan(target);
      const longer = { ...timing, leadDays: leads.map((lead) => lead + 7) };
      expect(orderByInDays(longer, target)).toBe(by - 7);
      expect(stoppedDays(longer, 0)).toBeGreaterThanOrEqual(stoppedDays(timing, 0));
    }),
  );
  expect(() => orderByInDays({ needDays: Float64Array.of(1), leadDays: [1] }, 1)).toThrow('orderByInDays');
});
