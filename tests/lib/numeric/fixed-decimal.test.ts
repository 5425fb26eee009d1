import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  FIXED_ONE,
  fixedOf,
  overFixed,
  rootFixed,
  roundHalfUp,
  timesFixed,
} from '@/lib/numeric/fixed-decimal';

// source: hand. 0.00675 is a half of the last place and goes up; as a double it may lie below it.
it('rounds a true half up', () => {
  expect(roundHalfUp(fixedOf(0.00675), 4)).toBe(68);
  expect(roundHalfUp(fixedOf(0.00674999), 4)).toBe(67);
  expect(roundHalfUp(timesFixed(fixedOf(0.3), fixedOf(0.0025)), 4)).toBe(8);
  expect(roundHalfUp(0n, 4)).toBe(0);
});

// source: identity. A figure written in decimals is kept as written.
it('keeps what is written', () => {
  fc.assert(
    fc.property(fc.integer({ min: -1e6, max: 1e6 }), (tenThousandths) => {
      expect(fixedOf(tenThousandths / 10_000) * 10_000n).toBe(BigInt(tenThousandths) * FIXED_ONE);
    }),
  );
  expect(fixedOf(1e-7) * 10_000_000n).toBe(FIXED_ONE);
});

// source: identity. A root's power does not exceed the figure, and that of the next figure does; perfect powers come back exactly.
it('takes roots to the last place', () => {
  fc.assert(
    fc.property(
      fc.bigInt({ min: 0n, max: 10n ** 27n }),
      fc.constantFrom(2 as const, 3 as const),
      (a, degree) => {
        const root = rootFixed(a, degree);
        const power = (x: bigint) => x ** BigInt(degree);
        const scaled = a * FIXED_ONE ** BigInt(degree - 1);
        expect(power(root) <= scaled && power(root + 1n) > scaled).toBe(true);
      },
    ),
  );
  expect(rootFixed(fixedOf(0.015625), 3)).toBe(fixedOf(0.25));
  expect(rootFixed(fixedOf(0.5625), 2)).toBe(fixedOf(0.75));
});

// source: hand. 1 ÷ 8 = 0.125.
it('divides', () => {
  expect(overFixed(fixedOf(1), fixedOf(8))).toBe(fixedOf(0.125));
});

it('throws outside its domain', () => {
  expect(() => fixedOf(Number.NaN)).toThrow('invariant broken');
  expect(() => fixedOf(1e21)).toThrow('invariant broken');
  expect(() => overFixed(1n, 0n)).toThrow('invariant broken');
  expect(() => rootFixed(-1n, 2)).toThrow('invariant broken');
  expect(() => roundHalfUp(-1n, 4)).toThrow('invariant broken');
});
