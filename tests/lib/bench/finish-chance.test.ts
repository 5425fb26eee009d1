import fc from 'fast-check';
import { expect, it } from 'vitest';
import { finishChance, surelyMore, thinnedEnds } from '@/lib/bench/finish-chance';

const lives = fc.array(fc.double({ min: 0, max: 500, noNaN: true }), { minLength: 64, maxLength: 400 });

// source: formula. P(T > k + n | T > k) = S(k + n)/S(k), counted.
it('is the share of the futures still ahead that last so far', () => {
  const left = Array.from({ length: 100 }, (_, i) => i + 1);
  expect(finishChance(left, 0, 0)).toBe(1);
  expect(finishChance(left, 0, 51)).toBe(50 / 100);
  expect(finishChance(left, 50, 26)).toBe(25 / 51);
  expect(finishChance(left, 96, 1)).toBeNull();
});

// source: identity. Survival to k and on to k + n is survival to k + n.
it('chains: S(a + b) = S(a) · S(b given a)', () => {
  fc.assert(
    fc.property(lives, fc.nat(40), fc.nat(40), (left, a, b) => {
      const first = finishChance(left, 0, a);
      const then = finishChance(left, a, b);
      const both = finishChance(left, 0, a + b);
      if (first !== null && then !== null && both !== null) expect(first * then).toBeCloseTo(both, 12);
    }),
  );
});

// source: identity. More ends asked for are never likelier; the sure number is finished with at least the chance asked for.
it('falls with the ends asked for, and the sure ends keep their word', () => {
  fc.assert(
    fc.property(
      lives,
      fc.nat(60),
      fc.nat(30),
      fc.constantFrom(0.5, 0.8, 0.9, 0.95),
      (left, more, since, chance) => {
        const now = finishChance(left, since, more);
        const later = finishChance(left, since, more + 1);
        if (now !== null && later !== null) expect(later).toBeLessThanOrEqual(now);
        const sure = surelyMore(left, since, chance);
        if (sure !== null && sure > 0)
          expect(finishChance(left, since, sure) ?? 0).toBeGreaterThanOrEqual(chance);
        if (sure !== null) expect(finishChance(left, since, sure + 1.001) ?? 0).toBeLessThan(chance + 1e-9);
      },
    ),
  );
});

// source: identity. Thinning keeps order, and no share is promised that the draws do not hold, nor more than one point held back.
it('thins without moving a share by more than a point', () => {
  fc.assert(
    fc.property(lives, fc.nat(500), (draws, n) => {
      const sorted = Float64Array.from(draws, (d) => Math.round(d * 100) / 100).sort();
      const points = thinnedEnds(sorted, 128);
      expect([...points].sort((a, b) => a - b)).toEqual(points);
      const share = (values: ArrayLike<number>) =>
        Array.from(values).filter((v) => v >= n).length / values.length;
      expect(share(points)).toBeLessThanOrEqual(share(sorted) + 1e-12);
      expect(share(points)).toBeGreaterThanOrEqual(share(sorted) - 1 / 128 - 1e-12);
    }),
  );
});
