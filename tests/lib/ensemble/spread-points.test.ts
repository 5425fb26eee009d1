import { expect, it } from 'vitest';
import { spreadPoints } from '@/lib/ensemble/spread-points';

const COUNT = 2048;

// source: formula. Kolmogorov distance from uniform: plain chance has 0.87/√2048 = 0.019 on average in one column and near
// 1.6/√2048 = 0.035 in the worst of forty. Here the worst of seventy stays below one stratum and rounding.
it('spreads every column one to a stratum', () => {
  for (const column of spreadPoints({ count: COUNT, dimensions: 70, key: 'k' })) {
    const strata = Float64Array.from(column)
      .sort()
      .map((u) => Math.floor(u * COUNT));
    expect(strata.every((stratum, k) => stratum === k)).toBe(true);
  }
});

// source: formula. Two sets of different keys are unrelated: correlations within 4.5/√2048 (1,600 pairs).
it('gives sets of different keys that do not move together', () => {
  const [a, b] = ['blade', 'die'].map((key) => spreadPoints({ count: COUNT, dimensions: 40, key }));
  for (const x of a ?? []) {
    for (const y of b ?? []) {
      const product = x.reduce((sum, value, k) => sum + (value - 0.5) * ((y[k] ?? 0) - 0.5) * 12, 0) / COUNT;
      expect(Math.abs(product)).toBeLessThan(4.5 / Math.sqrt(COUNT));
    }
  }
});

it('serves no columns, and few points, and is the same every time', () => {
  expect(spreadPoints({ count: 8, dimensions: 0, key: 'k' })).toEqual([]);
  const few = spreadPoints({ count: 8, dimensions: 5, key: 'k' });
  expect(few.flatMap((column) => [...column]).every((u) => u > 0 && u < 1)).toBe(true);
  expect(spreadPoints({ count: 8, dimensions: 5, key: 'k' })).toEqual(few);
});
