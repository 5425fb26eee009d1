import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inToMm, MM_PER_IN, mmToIn, rationalInToMm } from '@/lib/units/inch-mm';
import { rational } from '@/lib/units/rational';

// source: published. International yard and pound agreement, 1959: 1 in = 25.4 mm exactly.
it('an inch is 25.4 mm', () => {
  expect(MM_PER_IN).toBe(25.4);
});

// source: hand. 9/16 × 25.4 = 228.6/16 = 14.2875; 3/8 × 25.4 = 9.525; 12.7 ÷ 25.4 = 0.5.
it('converts known sizes', () => {
  expect(inToMm(0.5625)).toBe(14.2875);
  expect(rationalInToMm(rational(9, 16))).toBe(14.2875);
  expect(rationalInToMm(rational(3, 8))).toBe(9.525);
  expect(mmToIn(12.7)).toBe(0.5);
});

// source: identity. There and back; and the exact fraction agrees with the decimal. Two roundings: 4 ulp.
it('inch and millimetre agree', () => {
  const part = fc.integer({ min: 1, max: 1_000_000 });
  fc.assert(
    fc.property(part, part, (num, den) => {
      const inches = num / den;
      const exactMm = rationalInToMm(rational(num, den));
      expect(Math.abs(mmToIn(inToMm(inches)) / inches - 1)).toBeLessThanOrEqual(4 * Number.EPSILON);
      expect(Math.abs(inToMm(inches) / exactMm - 1)).toBeLessThanOrEqual(4 * Number.EPSILON);
    }),
  );
});
