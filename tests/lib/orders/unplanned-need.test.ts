import { expect, it } from 'vitest';
import { mergeNeeds, unplannedNeed } from '@/lib/orders/unplanned-need';
import { poissonCdf } from '@/lib/stock/poisson-stock';

const K = 2048;
const all = (value: number) => new Float64Array(K).fill(value);
const work = (change: object = {}) => ({
  ...{ key: 'die', paceExposure: all(1000), bookedExposure: all(400), leftOver: all(0), newLife: all(600) },
  ...{ horizonDays: 56, drawCount: K },
  ...change,
});
const share = (needDays: readonly Float64Array[], n: number) =>
  1 - (needDays[n]?.filter(Number.isFinite).length ?? 0) / K;

// source: formula. 600 turns beyond the books at 600 a die: a Poisson number of mean 1.
it('is Poisson about what the pace brings beyond the books', () => {
  const needDays = unplannedNeed(work());
  for (const n of [0, 1, 2]) expect(share(needDays, n)).toBeCloseTo(poissonCdf(1, n), 2);
});

// source: hand. Booked beyond the pace, or enough left over: nothing. 300 left over of 600: none before half the days are gone.
it('first uses up what is left over, and never counts booked work twice', () => {
  expect(unplannedNeed(work({ bookedExposure: all(2000) }))).toEqual([]);
  expect(unplannedNeed(work({ leftOver: all(700) }))).toEqual([]);
  const half = unplannedNeed(work({ leftOver: all(300) }));
  expect(share(half, 0)).toBeCloseTo(poissonCdf(0.5, 0), 2);
  expect(Math.min(...(half[0] ?? []))).toBe(28);
});

// source: hand.
it('merges need days in rising order', () => {
  const merged = mergeNeeds([Float64Array.of(10, 30)], [Float64Array.of(20, 5)], 2);
  expect(merged.map((days) => [...days])).toEqual([
    [10, 5],
    [20, 30],
  ]);
});
