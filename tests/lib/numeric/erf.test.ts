import { expect, it } from 'vitest';
import { erf, erfc } from '@/lib/numeric/erf';
import { relativeMiss } from '@/tests/support/relative-miss';
import special from '../../fixtures/numeric/special.json';

// source: other-software. mpmath, 50 digits, tests/fixtures/numeric/generate.py.
it.each(special.erf)('erf and erfc at $x agree with high-precision arithmetic', (row) => {
  expect(relativeMiss(erf(row.x), row.erf)).toBeLessThan(1e-15);
  expect(relativeMiss(erfc(row.x), row.erfc)).toBeLessThan(4e-15);
});

// source: formula. Limits of the definition.
it('is settled at its ends', () => {
  expect([erf(0), erfc(0), erf(40), erfc(40), erfc(-40)]).toEqual([0, 1, 1, 0, 2]);
  expect(erf(Number.NaN)).toBeNaN();
});
