import fc from 'fast-check';
import { expect, it } from 'vitest';
import { incompleteBeta } from '@/lib/numeric/incomplete-beta';
import { relativeMiss } from '@/tests/support/relative-miss';

// source: other-software. SciPy 1.17.1, scipy.special.betainc(a, b, x).
it.each([
  [0.5, 2, 0.1, 0.45853026072441494],
  [2, 3, 0.4, 0.5247999999999999],
  [10, 0.5, 0.95, 0.31715157546554495],
  [50, 0.5, 0.999, 0.7523690199653766],
  [0.5, 0.5, 0.2, 0.2951672353008665],
  [5, 200, 0.03, 0.7348317503349192],
])('I_x(%f, %f) at %f', (a, b, x, expected) => {
  expect(relativeMiss(incompleteBeta({ a, b }, x), expected)).toBeLessThan(1e-12);
});

// source: identity. I_x(a, b) + I_{1−x}(b, a) = 1, and it grows with x.
it('mirrors and grows', () => {
  const shape = fc.double({ min: 0.2, max: 40, noNaN: true });
  const share = fc.double({ min: 0.001, max: 0.999, noNaN: true });
  fc.assert(
    fc.property(shape, shape, share, share, (a, b, x, y) => {
      expect(incompleteBeta({ a, b }, x) + incompleteBeta({ a: b, b: a }, 1 - x)).toBeCloseTo(1, 12);
      const [low, high] = [Math.min(x, y), Math.max(x, y)];
      expect(incompleteBeta({ a, b }, low)).toBeLessThanOrEqual(incompleteBeta({ a, b }, high) + 1e-13);
    }),
  );
  expect([incompleteBeta({ a: 0, b: 1 }, 0.5), incompleteBeta({ a: 1, b: 1 }, 2)]).toEqual([
    Number.NaN,
    Number.NaN,
  ]);
});
