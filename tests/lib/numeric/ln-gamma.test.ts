import { expect, it } from 'vitest';
import { lnGamma } from '@/lib/numeric/ln-gamma';
import { relativeMiss } from '@/tests/support/relative-miss';
import special from '../../fixtures/numeric/special.json';

// source: other-software. mpmath, 50 digits, tests/fixtures/numeric/generate.py. Tolerance: a dozen units in the last place.
it.each(special.lnGamma)('lnGamma($z) agrees with high-precision arithmetic', ({ z, value }) => {
  expect(relativeMiss(lnGamma(z), value)).toBeLessThan(2e-15);
});

// source: identity. Γ(z + 1) = z·Γ(z)
it.each([0.01, 0.49, 0.51, 1.3, 2.49, 2.6, 8.9, 9.5, 30])('obeys its recurrence at %d', (z) => {
  expect(Math.abs(lnGamma(z + 1) - lnGamma(z) - Math.log(z))).toBeLessThan(4e-14);
});

it('is not a number outside its domain', () => {
  expect([lnGamma(0), lnGamma(-1.5), lnGamma(Number.NaN)]).toEqual([Number.NaN, Number.NaN, Number.NaN]);
});
