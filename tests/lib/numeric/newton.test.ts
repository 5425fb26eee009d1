import { expect, it } from 'vitest';
import { minimizeNewton, type Surface } from '@/lib/numeric/newton';

function banana(point: Float64Array): Surface {
  const [x = Number.NaN, y = Number.NaN] = point;
  const bend = y - x * x;
  return {
    value: (1 - x) ** 2 + 100 * bend ** 2,
    gradient: Float64Array.of(-2 * (1 - x) - 400 * x * bend, 200 * bend),
    hessian: Float64Array.of(2 - 400 * y + 1200 * x * x, -400 * x, -400 * x, 200),
  };
}

// source: published. H. H. Rosenbrock, Computer Journal 3 (1960): minimum 0 at (1, 1).
it.each([
  [-1.2, 1],
  [5, -5],
  [0, 0],
])('finds the bottom of the curved valley from (%d, %d)', (x, y) => {
  const found = minimizeNewton({ start: [x, y], evaluate: banana, maxStep: 100 });
  expect(found.stoppedBy).toBe('converged');
  expect(Math.abs((found.x[0] ?? 0) - 1)).toBeLessThan(1e-7);
  expect(Math.abs((found.x[1] ?? 0) - 1)).toBeLessThan(1e-7);
});

// source: hand. x⁴ − 8x² has its minima at ±2 and a hump at 0, where the second derivative is negative.
it('leaves a hump, where Newton alone would climb', () => {
  const evaluate = ([x = 0]: Float64Array): Surface => ({
    value: x ** 4 - 8 * x * x,
    gradient: Float64Array.of(4 * x ** 3 - 16 * x),
    hessian: Float64Array.of(12 * x * x - 16),
  });
  const found = minimizeNewton({ start: [0.1], evaluate });
  expect(Math.abs((found.x[0] ?? 0) - 2)).toBeLessThan(1e-8);
});

it('says so when the cap is reached, and when no step helps', () => {
  expect(minimizeNewton({ start: [-1.2, 1], evaluate: banana, maxIterations: 2 }).stoppedBy).toBe('cap');
  const broken = (): Surface => ({
    value: 0,
    gradient: Float64Array.of(Number.NaN),
    hessian: Float64Array.of(1),
  });
  expect(minimizeNewton({ start: [1], evaluate: broken }).stoppedBy).toBe('stalled');
});
