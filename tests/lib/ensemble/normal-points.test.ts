import { expect, it } from 'vitest';
import { normalPoints } from '@/lib/ensemble/normal-points';
import { normalCdf } from '@/lib/numeric/normal';

const COUNT = 2048;

// source: identity. Whitened: mean 0, spread 1, no correlation, to rounding.
it.each([1, 12, 60, 70])('has exact first and second moments in %d columns', (dimensions) => {
  const columns = normalPoints({ count: COUNT, dimensions, key: 'k' });
  expect(columns).toHaveLength(dimensions);
  columns.forEach((a, i) => {
    expect(Math.abs(a.reduce((sum, value) => sum + value, 0) / COUNT)).toBeLessThan(1e-12);
    columns.slice(0, i + 1).forEach((b, j) => {
      const product = a.reduce((sum, value, k) => sum + value * (b[k] ?? 0), 0) / COUNT;
      expect(Math.abs(product - (i === j ? 1 : 0))).toBeLessThan(1e-11);
    });
  });
});

// source: formula. Kolmogorov distance from the normal: plain chance has 0.87/√2048 = 0.019 on average in one column and
// near 1.6/√2048 = 0.035 in the worst of forty. Here the worst of forty stays below that average.
it('stays normal in every column, closer than plain chance', () => {
  for (const column of normalPoints({ count: COUNT, dimensions: 40, key: 'k' })) {
    const sorted = Float64Array.from(column).sort();
    const distance = sorted.reduce(
      (most, z, k) => Math.max(most, Math.abs(normalCdf(z) - (k + 0.5) / COUNT)),
      0,
    );
    expect(distance).toBeLessThan(0.019);
  }
});

// source: formula. Two sets of different keys are unrelated: correlations within 4.5/√2048 (1,600 pairs).
it('gives sets of different keys that do not move together', () => {
  const [a, b] = ['blade', 'die'].map((key) => normalPoints({ count: COUNT, dimensions: 40, key }));
  for (const x of a ?? []) {
    for (const y of b ?? []) {
      const product = x.reduce((sum, value, k) => sum + value * (y[k] ?? 0), 0) / COUNT;
      expect(Math.abs(product)).toBeLessThan(4.5 / Math.sqrt(COUNT));
    }
  }
});

it('serves no columns, and few draws', () => {
  expect(normalPoints({ count: 8, dimensions: 0, key: 'k' })).toEqual([]);
  expect(
    normalPoints({ count: 8, dimensions: 5, key: 'k' })
      .flatMap((column) => [...column])
      .every(Number.isFinite),
  ).toBe(true);
});
