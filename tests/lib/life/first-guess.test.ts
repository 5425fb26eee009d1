import { expect, it } from 'vitest';
import { guessAsNormal, orderGuesses } from '@/lib/life/first-guess';
import { normalCdf } from '@/lib/numeric/normal';

// source: identity. The band lifeBase/factor … lifeBase·factor holds 80 % of the belief.
it('puts eight tenths of the belief inside "give or take a factor"', () => {
  const { mean, sd } = guessAsNormal({ odIn: 0.5625, lifeBase: 150 * 16.9, factor: 2 });
  const inside =
    normalCdf((Math.log(150 * 16.9 * 2) - mean) / sd) - normalCdf((Math.log((150 * 16.9) / 2) - mean) / sd);
  expect(Math.abs(inside - 0.8)).toBeLessThan(1e-12);
});

it('refuses a guess that says nothing', () => {
  expect(() => guessAsNormal({ odIn: 0.25, lifeBase: 0, factor: 2 })).toThrow('invariant');
  expect(() => guessAsNormal({ odIn: 0.25, lifeBase: 10, factor: 1 })).toThrow('invariant');
});

it('orders guesses the same way from any order', () => {
  const guesses = [
    { partId: 'b', odIn: 0.5, lifeBase: 10, factor: 2 },
    { odIn: 0.5, lifeBase: 10, factor: 2 },
    { partId: 'a', odIn: 0.5, lifeBase: 10, factor: 3 },
    { partId: 'a', odIn: 0.5, lifeBase: 10, factor: 2 },
  ];
  expect(orderGuesses([...guesses].reverse())).toEqual(orderGuesses(guesses));
  expect(orderGuesses(guesses).map(({ partId }) => partId)).toEqual([undefined, 'a', 'a', 'b']);
});
