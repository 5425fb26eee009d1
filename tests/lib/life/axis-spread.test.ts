import { expect, it } from 'vitest';
import { axisSpread } from '@/lib/life/axis-spread';

const COVARIANCE = Float64Array.of(4, 1, 1, 2);

function over(value: (offset: Float64Array) => number) {
  return (offsets: readonly Float64Array[]): number[] => offsets.map(value);
}

// source: identity. A normal posterior is its own Laplace approximation: no lean.
it('is 1 on every side of a normal posterior', () => {
  const determinant = 7;
  const spread = axisSpread(
    COVARIANCE,
    2,
    over(([x = 0, y = 0]) => -(2 * x * x - 2 * x * y + 4 * y * y) / (2 * determinant)),
  );
  for (const value of [...spread.down, ...spread.up]) expect(Math.abs(value - 1)).toBeLessThan(1e-12);
});

// source: formula. A split normal of spreads 0.6 and 1.5 on the first axis gives back both.
it('finds the spread of either side', () => {
  const side = (x: number): number => x / (x < 0 ? 0.6 : 1.5);
  const { down, up } = axisSpread(
    Float64Array.of(1),
    1,
    over(([x = 0]) => -0.5 * side(x) ** 2),
  );
  expect(Math.abs((down[0] ?? 0) - 0.6)).toBeLessThan(1e-12);
  expect(Math.abs((up[0] ?? 0) - 1.5)).toBeLessThan(1e-12);
});

it('stays within a half and three, whatever it meets', () => {
  const wall = axisSpread(
    Float64Array.of(1),
    1,
    over(([x = 0]) => (x < 0 ? Number.NEGATIVE_INFINITY : 0)),
  );
  expect([wall.down[0], wall.up[0]]).toEqual([0.5, 3]);
});
