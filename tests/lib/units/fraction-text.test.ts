import { expect, it } from 'vitest';
import { fractionAscii, fractionText } from '@/lib/units/fraction-text';
import { rational } from '@/lib/units/rational';

// source: hand. 24/16 = 1 1/2; U+2044 is the Unicode fraction slash.
it('writes true fractions with the fraction slash, whole part first', () => {
  expect(fractionText(rational(9, 16))).toBe('9\u204416');
  expect(fractionText(rational(24, 16))).toBe('1 1\u20442');
  expect(fractionText(rational(2, 2))).toBe('1');
  expect(fractionText(rational(0, 3))).toBe('0');
});

// source: hand. The same with U+002F.
it('writes plain fractions for keys and files', () => {
  expect(fractionAscii(rational(9, 16))).toBe('9/16');
  expect(fractionAscii(rational(11, 4))).toBe('2 3/4');
});

it('throws below zero', () => {
  expect(() => fractionText(rational(-1, 2))).toThrow('invariant broken');
});
