import { expect, it } from 'vitest';
import { integratePieces } from '@/lib/numeric/integrate';

// source: formula. ∫₀² x³¹ dx = 2³²/32: the rule is exact to degree 31.
it('is exact for polynomials', () => {
  expect(integratePieces((x) => x ** 31, [0, 2]) / (2 ** 32 / 32)).toBeCloseTo(1, 13);
});

// source: formula. ∫₀^π sin = 2; a corner at a break costs nothing: ∫|x| from −1 to 1 = 1.
it('meets the integrals of the textbook', () => {
  expect(integratePieces(Math.sin, [0, Math.PI / 2, Math.PI])).toBeCloseTo(2, 14);
  expect(integratePieces(Math.abs, [-1, 0, 1])).toBeCloseTo(1, 14);
  expect(integratePieces(() => 1, [3, 3])).toBe(0);
});

it('throws on nothing to integrate over', () => {
  expect(() => integratePieces(Math.sin, [1])).toThrow('at least 2 breaks');
});
