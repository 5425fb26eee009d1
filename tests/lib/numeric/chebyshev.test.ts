import { expect, it } from 'vitest';
import { barycentricWeights, chebyshevPoints, interpolationRow } from '@/lib/numeric/chebyshev';

const points = chebyshevPoints(24, 3);
const weights = barycentricWeights(24);
const read = (f: (x: number) => number, x: number) =>
  interpolationRow(points, weights, x).reduce((sum, part, j) => sum + part * f(points[j] as number), 0);

// source: identity. A polynomial of degree below the number of points is read off exactly, exp to the last digits.
it('reads smooth functions off in between', () => {
  for (const x of [0, 1e-9, 0.31, 1.5, 2.999, 3]) {
    expect(read((t) => t ** 5 - 2 * t, x)).toBeCloseTo(x ** 5 - 2 * x, 11);
    expect(read(Math.exp, x)).toBeCloseTo(Math.exp(x), 12);
  }
});

it('has both ends among its points, and takes a point for itself', () => {
  expect([points[0], points[23]]).toEqual([0, 3]);
  expect(interpolationRow(points, weights, 1e-310)[0]).toBe(1);
  expect([...points].every((point, i) => i === 0 || point > (points[i - 1] as number))).toBe(true);
});
