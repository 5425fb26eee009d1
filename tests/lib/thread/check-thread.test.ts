import fc from 'fast-check';
import { expect, it } from 'vitest';
import { checkThread } from '@/lib/thread/check-thread';
import { internalThreadLimits } from '@/lib/thread/internal-limits';
import { externalThreadLimits } from '@/lib/thread/limits';

const field = (num: number, den: number, tpi: number) => {
  const checked = checkThread({ sizeIn: { num, den }, tpi });
  return checked.ok ? 'ok' : checked.refusal.field;
};

// source: hand. 1-14 is a thread; 3 and 90 threads per inch, 1/64 in and 7 in lie outside; 1/4 in with 4 is all depth.
it('tells a thread from what is none', () => {
  expect([
    field(1, 1, 14),
    field(1, 1, 3),
    field(1, 1, 90),
    field(1, 64, 80),
    field(7, 1, 8),
    field(1, 4, 4),
    field(1, 1, Number.NaN),
  ]).toEqual(['ok', 'tpi', 'tpi', 'size', 'size', 'tpi', 'tpi']);
});

// source: identity. What passes the door is inside the domain of the formulas.
it('lets through only what the formulas take', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 500 }),
      fc.constantFrom(1, 2, 4, 8, 16, 32, 64),
      fc.integer({ min: 1, max: 100 }),
      (num, den, tpi) => {
        const thread = { sizeIn: { num, den }, tpi };
        if (!checkThread(thread).ok) return;
        expect(externalThreadLimits(thread, '2A').pitchMinIn).toBeGreaterThan(0);
        expect(internalThreadLimits(thread, '2B').minorMinIn).toBeGreaterThan(0);
      },
    ),
  );
});
