import fc from 'fast-check';
import { expect, it } from 'vitest';
import { containersToBuy, containerUsedInTime, monthsOfContainer } from '@/lib/fluid/container';

// source: published. 175 ends a month at about 0.73 mL by drop count empty a 5 L can in about 39 months, at three times that in
// about 13 (common practice figures of a small shop, worked out by hand: 5000 ÷ (175 × 0.733) = 39.0).
it('a 5 L can lasts a small shop 39 months by count, 13 at three times that', () => {
  const byCount = (175 * 0.733) / 30;
  expect(Math.round(monthsOfContainer({ containerMl: 5000, mlPerDay: byCount }))).toBe(39);
  expect(Math.round(monthsOfContainer({ containerMl: 5000, mlPerDay: 3 * byCount }))).toBe(13);
});

// source: hand. At 12.8 mL a day a year takes 4 672 mL: not 5 L but 2 L is used up in time; at 0.2 mL a day not even 100 mL.
it('proposes the largest container that is used up in time', () => {
  expect(containerUsedInTime({ mlPerDay: 12.8, lifeDays: 365 })).toBe(2000);
  expect(containerUsedInTime({ mlPerDay: 13.7, lifeDays: 365 })).toBe(5000);
  expect(containerUsedInTime({ mlPerDay: 0.2, lifeDays: 365 })).toBeNull();
});

// source: hand. Wanted 3 containers; only 1 825 mL are used in a year, so one is bought; without a life, three.
it('never buys more than is used within its life, and at least one', () => {
  const order = { wantMl: 2600, containerMl: 1000, mlPerDay: 5 };
  expect(containersToBuy({ ...order, lifeDays: 365 })).toBe(1);
  expect(containersToBuy({ ...order, lifeDays: 730 })).toBe(3);
  expect(containersToBuy({ ...order, lifeDays: null })).toBe(3);
  expect(containersToBuy({ ...order, wantMl: 0, lifeDays: null })).toBe(1);
});

// source: identity. What is bought beyond the first container never outlasts its life.
it('keeps to the cap whatever is wanted', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 50_000 }),
      fc.integer({ min: 100, max: 5000 }),
      fc.integer({ min: 1, max: 60 }),
      fc.integer({ min: 1, max: 1500 }),
      (wantMl, containerMl, mlPerDay, lifeDays) => {
        const many = containersToBuy({ wantMl, containerMl, mlPerDay, lifeDays });
        expect(many === 1 || many * containerMl <= mlPerDay * lifeDays + 1e-6).toBe(true);
        expect(many === 1 || (many - 1) * containerMl < wantMl).toBe(true);
      },
    ),
  );
});
