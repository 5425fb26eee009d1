import fc from 'fast-check';
import { expect, it } from 'vitest';
import { pitchIn, pitchMm, turnsPerEnd } from '@/lib/thread/pitch';

// source: hand. 1/16 = 0.0625 in; 25.4/20 = 1.27 mm.
it('pitch is one inch over the threads per inch', () => {
  expect(pitchIn(16)).toBe(0.0625);
  expect(pitchMm(20)).toBe(1.27);
});

// source: hand. 12.7 mm = 1/2 in × 18 = 9 turns; 0 mm cuts no turn; 11.1125 mm = 7/16 in × 24 = 10.5.
it('turns are length over pitch', () => {
  expect(turnsPerEnd({ lengthMm: 12.7, tpi: 18 })).toBeCloseTo(9, 12);
  expect(turnsPerEnd({ lengthMm: 11.1125, tpi: 24 })).toBeCloseTo(10.5, 12);
  expect(turnsPerEnd({ lengthMm: 0, tpi: 18 })).toBe(0);
});

// source: identity. A thread cut in two goes has the turns of both; inch and millimetre pitch agree.
it('turns add up along the thread', () => {
  // From a micrometre up: below 1e-300 a double has no relative precision to speak of.
  const length = fc.double({ min: 0.001, max: 1000, noNaN: true });
  fc.assert(
    fc.property(length, length, fc.integer({ min: 1, max: 80 }), (a, b, tpi) => {
      const parts = turnsPerEnd({ lengthMm: a, tpi }) + turnsPerEnd({ lengthMm: b, tpi });
      const whole = turnsPerEnd({ lengthMm: a + b, tpi });
      // Five roundings in all, each at most half an ulp.
      expect(Math.abs(parts - whole)).toBeLessThanOrEqual(5 * Number.EPSILON * whole);
      expect(Math.abs(pitchMm(tpi) / pitchIn(tpi) / 25.4 - 1)).toBeLessThanOrEqual(4 * Number.EPSILON);
    }),
  );
});

it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('throws on %d threads per inch', (tpi) => {
  expect(() => pitchIn(tpi)).toThrow('invariant broken');
  expect(() => pitchMm(tpi)).toThrow('invariant broken');
  expect(() => turnsPerEnd({ lengthMm: 10, tpi })).toThrow('invariant broken');
});

it('throws on a length below 0', () => {
  expect(() => turnsPerEnd({ lengthMm: -1, tpi: 18 })).toThrow('invariant broken');
});
