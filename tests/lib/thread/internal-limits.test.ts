import fc from 'fast-check';
import { expect, it } from 'vitest';
import { INTERNAL_CLASSES, internalThreadLimits } from '@/lib/thread/internal-limits';
import { externalThreadLimits } from '@/lib/thread/limits';
import { numberedSizeIn } from '@/lib/thread/unified-series';

// source: identity. A collar at its lower limits still goes over a tube at its upper ones, in every pair of classes.
it('never interferes with the external thread', () => {
  const sizes = fc.integer({ min: 8, max: 64 }).map((sixteenths) => ({ num: sixteenths, den: 16 }));
  fc.assert(
    fc.property(sizes, fc.constantFrom(8, 12, 14, 16, 18, 20, 24, 28), (sizeIn, tpi) => {
      const close = externalThreadLimits({ sizeIn, tpi }, '3A');
      for (const cls of INTERNAL_CLASSES) {
        const inside = internalThreadLimits({ sizeIn, tpi }, cls);
        expect(inside.pitchMinIn).toBeGreaterThanOrEqual(close.pitchMaxIn);
        expect(inside.majorMinIn).toBeGreaterThanOrEqual(close.majorMaxIn);
        expect(inside.pitchMaxIn).toBeGreaterThan(inside.pitchMinIn);
        expect(inside.minorMaxIn).toBeGreaterThan(inside.minorMinIn);
      }
    }),
  );
});

// source: published, from memory. ASME B1.1 as handbooks print it: numbered sizes, and coarse threads' minor limits.
it.each([
  [numberedSizeIn(4), 40, '2B', 0.0849, 0.0939],
  [numberedSizeIn(6), 32, '2B', 0.104, 0.114],
  [numberedSizeIn(10), 32, '2B', 0.156, 0.164],
  [numberedSizeIn(8), 32, '2B', 0.13, 0.139],
  [{ num: 1, den: 2 }, 13, '3B', 0.417, 0.4284],
] as const)('%o-%d %s minor diameter', (sizeIn, tpi, threadClass, minorMin, minorMax) => {
  const limits = internalThreadLimits({ sizeIn, tpi }, threadClass);
  expect([limits.minorMinIn, limits.minorMaxIn]).toEqual([minorMin, minorMax]);
});
