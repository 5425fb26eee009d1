import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fromMicro, toMicro } from '@/lib/units/micro';

// source: hand. 10.9375 turns = 10 937 500 millionths; 0.1 + 0.2 = 300 000 millionths, where doubles give 0.30000000000000004.
it('counts in whole millionths', () => {
  expect(toMicro(10.9375)).toBe(10_937_500);
  expect(fromMicro(10_937_500)).toBe(10.9375);
  expect(toMicro(0.1) + toMicro(0.2)).toBe(toMicro(0.3));
});

// source: hand. 0.0000005 × 10^6 = 0.5, a half, which goes away from zero: 1 and −1.
it('rounds halves away from zero, so a reversal cancels', () => {
  expect(toMicro(0.0000005)).toBe(1);
  expect(toMicro(-0.0000005)).toBe(-1);
  expect(Object.is(toMicro(-1e-9), 0)).toBe(true);
});

// source: identity. −x undoes x; there and back returns the millionth.
it('a reversal cancels its entry exactly, and micro round-trips', () => {
  fc.assert(
    fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), (value) => {
      expect(toMicro(value) + toMicro(-value)).toBe(0);
    }),
  );
  fc.assert(
    fc.property(fc.integer({ min: -1e15, max: 1e15 }), (micro) => {
      expect(toMicro(fromMicro(micro))).toBe(micro);
    }),
  );
});

it.each([Number.NaN, Number.POSITIVE_INFINITY, 1e10])('toMicro throws on %d', (value) => {
  expect(() => toMicro(value)).toThrow('invariant broken: toMicro');
});

it('fromMicro throws on what is not a whole number', () => {
  expect(() => fromMicro(0.5)).toThrow('invariant broken: fromMicro');
});
