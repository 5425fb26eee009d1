import { expect, it } from 'vitest';
import { niceStep, wearCurve } from '@/lib/outlook/wear-curve';
import { wearShop } from '../../support/wear-shop';

const curve = wearCurve(wearShop(), 'die-3-8');

// source: hand. Nothing is worn at the start; the share only falls; the band holds its middle.
it('falls from one, within its band', () => {
  const points = curve?.model ?? [];
  expect(points[0]).toEqual({ ends: 0, low: 1, median: 1, high: 1 });
  expect(points.length).toBeGreaterThan(12);
  for (const [at, { low, median, high }] of points.entries()) {
    expect(median).toBeLessThanOrEqual(points[at - 1]?.median ?? 1);
    expect(low).toBeLessThanOrEqual(median);
    expect(median).toBeLessThanOrEqual(high);
  }
  expect(points.at(-1)?.median).toBeLessThan(0.05);
});

// source: hand. Half of new dies last beyond the typical life, near 100 threads.
it('passes one half at the typical life', () => {
  const half = curve?.model.findLast(({ median }) => median >= 0.5)?.ends ?? 0;
  expect(half).toBeGreaterThan(85);
  expect(half).toBeLessThan(115);
});

// source: formula. Kaplan–Meier by hand: 8 of 11 wore out, those dropped at 30, taken out at 60 and still cutting at 20 are
// gone before the first wear-out at 79.5: eight at risk, the share falls by an eighth each time.
it('stands beside the shop’s own edges, judged without a model', () => {
  expect(curve?.log.map(({ survival }) => survival)).toEqual(
    [7, 6, 5, 4, 3, 2, 1, 0].map((left) => expect.closeTo(left / 8, 12)),
  );
  expect(curve?.log[0]).toMatchObject({ atRisk: 8, worn: 1, age: expect.closeTo(79.5, 9) });
  expect(curve?.lives).toHaveLength(11);
});

// source: hand. Stated.
it('a part without an edge, or unknown, has none', () => {
  expect(wearCurve(wearShop(), 'go-ring-3-8')).toBeUndefined();
  expect(wearCurve(wearShop(), 'gone')).toBeUndefined();
});

// source: hand. The next of 1, 2, 5 times a power of ten.
it.each([
  [0.3, 1],
  [1, 1],
  [1.2, 2],
  [4, 5],
  [11.6, 20],
  [50, 50],
  [60, 100],
  [Number.NaN, 1],
])('niceStep of %s is %s', (atLeast, step) => {
  expect(niceStep(atLeast)).toBe(step);
});
