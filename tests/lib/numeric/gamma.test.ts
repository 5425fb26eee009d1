import { expect, it } from 'vitest';
import { gammaP, gammaQ, gammaQuantile } from '@/lib/numeric/gamma';
import { relativeMiss } from '@/tests/support/relative-miss';
import special from '../../fixtures/numeric/special.json';

// source: other-software. mpmath, 50 digits, tests/fixtures/numeric/generate.py.
// Tolerance: x^a·e^(−x) is formed from logarithms of size a·ln x, whose rounding is magnified by that size.
it.each(special.gamma)('gammaP and gammaQ at a = $a, x = $x', ({ a, x, p, q }) => {
  const tolerance = 1e-14 + 4e-16 * a * Math.max(1, Math.abs(Math.log(x)));
  if (p > 1e-290) expect(Math.abs(gammaP(a, x) - p)).toBeLessThan(tolerance * Math.max(p, 1e-3));
  if (q > 1e-290) expect(Math.abs(gammaQ(a, x) - q)).toBeLessThan(tolerance * Math.max(q, 1e-3));
});

it.each(special.gammaQuantile)('gammaQuantile at shape $shape, p = $p', ({ shape, p, x }) => {
  expect(relativeMiss(gammaQuantile({ shape, rate: 1 }, p), x)).toBeLessThan(shape < 0.1 ? 1e-11 : 1e-12);
});

// source: formula. A gamma figure of shape 1 is exponential; the rate only scales it.
it('reduces to the exponential and scales with its rate', () => {
  expect(relativeMiss(gammaQuantile({ shape: 1, rate: 4 }, 0.9), Math.log(10) / 4)).toBeLessThan(1e-14);
  expect(gammaQuantile({ shape: 2, rate: 1 }, 0)).toBe(0);
  expect(gammaQuantile({ shape: 2, rate: 1 }, 1)).toBe(Number.POSITIVE_INFINITY);
  expect([gammaQuantile({ shape: 0, rate: 1 }, 0.5), gammaP(-1, 1), gammaQ(1, -1)]).toEqual(
    Array(3).fill(Number.NaN),
  );
});
