import fc from 'fast-check';
import { expect, it } from 'vitest';
import { EXTERNAL_CLASSES, externalThreadLimits } from '@/lib/thread/limits';

const sizes = fc.integer({ min: 8, max: 64 }).map((sixteenths) => ({ num: sixteenths, den: 16 }));
const pitches = fc.constantFrom(6, 8, 10, 12, 13, 14, 16, 18, 20, 24, 28, 32);

// source: identity. What a class means: a closer class lies inside a looser one, and 3A starts from the basic size.
it('classes nest, limits stand in order, and every figure has four decimals', () => {
  fc.assert(
    fc.property(sizes, pitches, (sizeIn, tpi) => {
      const [loose, usual, close] = EXTERNAL_CLASSES.map((cls) => externalThreadLimits({ sizeIn, tpi }, cls));
      if (!loose || !usual || !close) throw new Error('three classes');
      expect(close.majorMaxIn).toBe(close.basicMajorIn);
      expect(close.pitchMaxIn).toBe(close.basicPitchIn);
      expect(usual.pitchMaxIn).toBeLessThan(close.pitchMaxIn);
      expect(loose.pitchMinIn).toBeLessThan(usual.pitchMinIn);
      expect(usual.pitchMinIn).toBeLessThan(close.pitchMinIn);
      for (const limits of [loose, usual, close]) {
        expect(limits.majorMinIn).toBeLessThan(limits.majorMaxIn);
        expect(limits.minorMaxUnrIn).toBeLessThan(limits.minorMaxUnIn);
        expect(limits.minorMaxUnIn).toBeLessThan(limits.pitchMinIn);
        for (const value of [limits.majorMinIn, limits.pitchMinIn, limits.minorMaxUnrIn, limits.allowanceIn])
          expect(Number(value.toFixed(4))).toBe(value);
      }
    }),
  );
});

// source: formula. Td₂ grows with the engagement, and only the pitch diameter's limits follow it.
it('a longer engagement widens the pitch tolerance', () => {
  const thread = { sizeIn: { num: 3, den: 4 }, tpi: 16 };
  const short = externalThreadLimits({ ...thread, engagementIn: 0.3 }, '3A');
  const long = externalThreadLimits({ ...thread, engagementIn: 1.5 }, '3A');
  expect(long.pitchToleranceIn).toBeGreaterThan(short.pitchToleranceIn);
  expect(long.majorMinIn).toBe(short.majorMinIn);
});

// source: hand. Outside the domain there is no thread of this kind.
it.each([
  [{ sizeIn: { num: 1, den: 4 }, tpi: 4 }],
  [{ sizeIn: { num: 1, den: 64 }, tpi: 80 }],
  [{ sizeIn: { num: 9, den: 16 }, tpi: 0 }],
  [{ sizeIn: { num: 9, den: 16 }, tpi: 18, engagementIn: 0 }],
])('throws on %o', (thread) => {
  expect(() => externalThreadLimits(thread, '2A')).toThrow('invariant broken');
});
