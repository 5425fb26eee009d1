import { describe, expect, it } from 'vitest';
import { normalCdf, normalQuantile } from '@/lib/numeric/normal';
import { relativeMiss } from '@/tests/support/relative-miss';
import special from '../../fixtures/numeric/special.json';

describe('against high-precision arithmetic', () => {
  // source: other-software. mpmath, 50 digits, tests/fixtures/numeric/generate.py.
  // At z = −37 a last-place error of z/√2 alone moves the tail by 37² · 1e-16, hence 4e-13.
  it.each(special.normalCdf)('normalCdf($z)', ({ z, value }) => {
    expect(relativeMiss(normalCdf(z), value)).toBeLessThan(Math.abs(z) > 6 ? 4e-13 : 6e-15);
  });

  it.each(special.normalQuantile)('normalQuantile($p)', ({ p, value }) => {
    // Beside p = 0.5 the spacing of doubles near p itself limits the quantile.
    expect(Math.abs(normalQuantile(p) - value)).toBeLessThan(2e-15 * Math.max(1, Math.abs(value)));
  });
});

// source: formula. Ends of the domain.
it('returns infinities at 0 and 1, and NaN outside', () => {
  expect([normalQuantile(0), normalQuantile(1)]).toEqual([
    Number.NEGATIVE_INFINITY,
    Number.POSITIVE_INFINITY,
  ]);
  expect([normalQuantile(-0.1), normalQuantile(1.1), normalQuantile(Number.NaN)]).toEqual(
    Array(3).fill(Number.NaN),
  );
});
