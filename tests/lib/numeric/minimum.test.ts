import { expect, it } from 'vitest';
import { findMinimum } from '@/lib/numeric/minimum';

// source: formula. Lowest points of a parabola, of x·ln x at 1/e, and of a corner, where the slope jumps.
it.each([
  ['a parabola', (x: number) => (x - 3) ** 2 + 1, 3, 1],
  ['x ln x', (x: number) => x * Math.log(x), 1 / Math.E, -1 / Math.E],
  ['a corner', (x: number) => Math.abs(x - 0.25), 0.25, 0],
])('finds the lowest point of %s', (_name, f, at, value) => {
  const found = findMinimum(f, { low: 0.01, high: 9 });
  expect(Math.abs(found.at - at)).toBeLessThan(1e-6);
  expect(Math.abs(found.value - value)).toBeLessThan(1e-7);
  expect(found.stoppedBy).toBe('width');
});

// source: hand. It never leaves its bracket, and says when it ran out of steps.
it('stays in its bracket and reports its cap', () => {
  const found = findMinimum((x) => x, { low: 2, high: 5, maxIterations: 3 });
  expect(found.at).toBeGreaterThanOrEqual(2);
  expect(found.stoppedBy).toBe('cap');
  expect(found.iterations).toBe(3);
});
