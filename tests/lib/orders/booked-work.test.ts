import fc from 'fast-check';
import { expect, it } from 'vitest';
import { bookedWork } from '@/lib/orders/booked-work';

const line = (startInDays: number, dueInDays: number, part = 0) => ({
  ...{ lineId: `L${startInDays}`, startInDays, dueInDays, part },
  ...{ amount: 100, weights: Float64Array.of(1, 2) },
});

// source: hand. Within 50 days: all of a line from day 10 to 20; 10 of the 100 days of one from day 40 to 140, a tenth; nothing
// of one from day 60; nothing of another part's. 100 + 10, and twice that where the material wears twice as much.
it('counts of each line what is cut within the days asked about', () => {
  const lines = [line(10, 20), line(40, 140), line(60, 61), line(10, 20, 1)];
  expect([...bookedWork(lines, 0, 50, 2)]).toEqual([110, 220]);
  expect([...bookedWork(lines, 1, 50, 2)]).toEqual([100, 200]);
  expect([...bookedWork([], 0, 50, 2)]).toEqual([0, 0]);
  // A line of a single day counts on that day, not before.
  expect([0, 6, 7].map((days) => bookedWork([line(7, 7)], 0, days, 2)[0])).toEqual([0, 0, 100]);
});

// source: identity. More days never hold less work, and in the end all of it.
it('grows with the days up to the whole', () => {
  const day = fc.integer({ min: 0, max: 300 });
  fc.assert(
    fc.property(day, day, day, day, (start, runs, one, other) => {
      const lines = [line(start, start + runs)];
      const within = (days: number) => bookedWork(lines, 0, days, 2)[0] as number;
      expect(within(Math.max(one, other))).toBeGreaterThanOrEqual(within(Math.min(one, other)));
      expect(within(start + runs)).toBe(100);
    }),
  );
});
