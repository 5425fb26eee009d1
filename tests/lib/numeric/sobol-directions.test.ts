import { expect, it } from 'vitest';
import { SOBOL_DIRECTIONS } from '@/lib/numeric/sobol-directions';

// source: formula. Initial values mᵢ are odd and below 2ⁱ; a primitive polynomial has a constant term and a degree
// equal to the number of initial values (Joe and Kuo 2008).
it('holds valid direction numbers', () => {
  for (const [polynomial = 0, ...initial] of SOBOL_DIRECTIONS) {
    expect(polynomial % 2).toBe(1);
    expect(Math.floor(Math.log2(polynomial))).toBe(initial.length);
    initial.forEach((m, i) => {
      expect(m % 2).toBe(1);
      expect(m).toBeLessThan(2 ** (i + 1));
    });
  }
  expect(new Set(SOBOL_DIRECTIONS.map(([polynomial]) => polynomial)).size).toBe(SOBOL_DIRECTIONS.length);
});
