import { expect, it } from 'vitest';
import { quantile } from '@/lib/life/weibull';
import { crpsOfDraws, crpsOfWeibull } from '@/lib/score/crps';
import { relativeMiss } from '@/tests/support/relative-miss';

// source: formula. The draws' own score at evenly spaced quantiles tends to the closed form.
it.each([
  [2, 100, 80],
  [1.3, 1200, 40],
  [4, 10, 22],
])('of many draws is that of their law, shape %d', (shape, scale, came) => {
  const draws = Float64Array.from({ length: 20_000 }, (_, i) =>
    quantile({ shape, scale }, (i + 0.5) / 20_000),
  );
  expect(relativeMiss(crpsOfDraws(draws, came), crpsOfWeibull({ shape, scale }, came))).toBeLessThan(1e-3);
});

// source: hand. A single draw is a plain guess: the score is its miss.
it('of one draw is its miss', () => {
  expect(crpsOfDraws([7], 10)).toBe(3);
});
