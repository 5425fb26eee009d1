import fc from 'fast-check';
import { expect, it } from 'vitest';
import { compareRationals, rational, rationalValue, sameRational } from '@/lib/units/rational';

// source: hand. 18/32 = 9/16; 0/5 = 0/1; -4/8 = -1/2.
it('rational reduces to lowest terms and keeps the sign above', () => {
  expect(rational(18, 32)).toEqual({ num: 9, den: 16 });
  expect(rational(0, 5)).toEqual({ num: 0, den: 1 });
  expect(rational(-4, 8)).toEqual({ num: -1, den: 2 });
});

it.each([
  [1, 0],
  [1, -2],
  [0.5, 2],
  [1, Number.NaN],
  [2 ** 53, 1],
])('rational throws on %d over %d: a bug, not a slip of the user', (num, den) => {
  expect(() => rational(num, den)).toThrow('invariant broken: rational requires');
});

// source: hand. 9 ÷ 16 = 0.5625, exact in binary.
it('rationalValue is the decimal', () => {
  expect(rationalValue({ num: 9, den: 16 })).toBe(0.5625);
});

// source: hand. 333333/1000000 is 1/3000000 short of 1/3; both cross products are compared whole.
it('compareRationals orders fractions that differ far down', () => {
  expect(compareRationals(rational(333_333, 1_000_000), rational(1, 3))).toBe(-1);
  expect(compareRationals(rational(3, 8), rational(1, 4))).toBe(1);
  expect(compareRationals(rational(6, 16), rational(3, 8))).toBe(0);
});

// source: identity. Two products beyond 2^53 that a double takes for equal: (2^53-1)/(2^53-2) against (2^53-2)/(2^53-3).
it('compareRationals stays exact where doubles tie', () => {
  const max = Number.MAX_SAFE_INTEGER;
  expect(max / (max - 1)).toBe((max - 1) / (max - 2));
  expect(compareRationals(rational(max, max - 1), rational(max - 1, max - 2))).toBe(-1);
});

// source: identity. Scaling both parts by k changes nothing; comparison is antisymmetric.
it('equal fractions are equal however they were written', () => {
  const part = fc.integer({ min: 1, max: 10_000 });
  fc.assert(
    fc.property(part, part, part, part, (a, b, k, c) => {
      expect(sameRational(rational(a * k, b * k), rational(a, b))).toBe(true);
      expect(compareRationals(rational(a, b), rational(c, k))).toBe(
        0 - compareRationals(rational(c, k), rational(a, b)) || 0,
      );
      expect(sameRational(rational(a, b), rational(c, k))).toBe(a * k === c * b);
    }),
  );
});
