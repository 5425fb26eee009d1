import fc from 'fast-check';
import { expect, it } from 'vitest';
import { looksLikeUnitSlip } from '@/lib/units/unit-slip';

// source: hand. 9.5 in = 241.3 mm against 11.1125 mm: ratio 21.7, which ÷ 25.4 is 0.855; 241.3 ÷ 25.4 = 9.5.
it('9.5 in where 9.5 mm was meant is taken for a unit slip', () => {
  const slip = looksLikeUnitSlip({ typedLengthMm: 241.3, expectedLengthMm: 11.1125 });
  expect(slip?.suspicion).toBe('mm-read-as-in');
  expect(slip?.meantLengthMm).toBeCloseTo(9.5, 12);
  expect(slip?.ratio).toBeCloseTo(241.3 / 11.1125, 12);
});

// source: hand. 0.4375 mm where 0.4375 in = 11.1125 mm was meant: ratio 1/25.4.
it('0.4375 mm where inches were meant is taken for a unit slip', () => {
  const slip = looksLikeUnitSlip({ typedLengthMm: 0.4375, expectedLengthMm: 11.1125 });
  expect(slip?.suspicion).toBe('in-read-as-mm');
  expect(slip?.meantLengthMm).toBeCloseTo(11.1125, 12);
});

// source: hand. Ratios 3 and 1/3, outside a factor 2 and far from 25.4.
it('other far-off lengths are too long or too short, no unit blamed', () => {
  expect(looksLikeUnitSlip({ typedLengthMm: 30, expectedLengthMm: 10 })).toEqual({
    suspicion: 'too-long',
    ratio: 3,
  });
  expect(looksLikeUnitSlip({ typedLengthMm: 10, expectedLengthMm: 30 })?.suspicion).toBe('too-short');
  expect(looksLikeUnitSlip({ typedLengthMm: 1000, expectedLengthMm: 10 })?.suspicion).toBe('too-long');
});

// source: hand. 15/16 in against 1/2 in, high-pressure length on a medium connection: ratio 1.875, inside a factor 2.
it('a length within a factor 2 passes, the factor itself included', () => {
  expect(looksLikeUnitSlip({ typedLengthMm: 23.8125, expectedLengthMm: 12.7 })).toBeUndefined();
  expect(looksLikeUnitSlip({ typedLengthMm: 20, expectedLengthMm: 10 })).toBeUndefined();
  expect(looksLikeUnitSlip({ typedLengthMm: 5, expectedLengthMm: 10 })).toBeUndefined();
  expect(looksLikeUnitSlip({ typedLengthMm: 20.01, expectedLengthMm: 10 })).toBeDefined();
});

// source: identity. The expected length typed in the wrong unit is always caught, whichever way round.
it('catches every swap of the two units', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 500, noNaN: true }), (expectedLengthMm) => {
      const long = looksLikeUnitSlip({ typedLengthMm: expectedLengthMm * 25.4, expectedLengthMm });
      const short = looksLikeUnitSlip({ typedLengthMm: expectedLengthMm / 25.4, expectedLengthMm });
      expect([long?.suspicion, short?.suspicion]).toEqual(['mm-read-as-in', 'in-read-as-mm']);
    }),
  );
});

it('throws on a length that is not above 0', () => {
  expect(() => looksLikeUnitSlip({ typedLengthMm: 0, expectedLengthMm: 10 })).toThrow('invariant broken');
});
