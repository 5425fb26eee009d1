import { expect, it } from 'vitest';
import { polynomial, rational } from '@/lib/numeric/polynomial';

// source: hand. 2·9 − 3 + 4 = 19; 19 / (3 + 1) = 4.75.
it('evaluates a polynomial and a quotient', () => {
  expect(polynomial([2, -1, 4], 3)).toBe(19);
  expect(rational([2, -1, 4], [1, 1], 3)).toBe(4.75);
  expect(polynomial([], 3)).toBe(0);
});
