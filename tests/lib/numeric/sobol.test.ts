import { expect, it } from 'vitest';
import { normalQuantile } from '@/lib/numeric/normal';
import { directionsOf, SOBOL_MAX_DIMENSIONS, scrambledSobol, sobolBits } from '@/lib/numeric/sobol';
import { SOBOL_DIRECTIONS } from '@/lib/numeric/sobol-directions';
import sobol from '../../fixtures/numeric/sobol.json';

// source: other-software. scipy.stats.qmc.Sobol(64, scramble=False, bits=32), tests/fixtures/numeric/generate.py.
it('equals the reference sequence in every dimension', () => {
  for (let dimension = 0; dimension < sobol.dimensions; dimension++) {
    const directions = directionsOf(dimension);
    sobol.points.forEach((point, index) => {
      const gray = index ^ (index >>> 1);
      expect(sobolBits(directions, gray)).toBe(point[dimension]);
    });
  }
});

it('serves as many dimensions as its table', () => {
  expect(SOBOL_MAX_DIMENSIONS).toBe(SOBOL_DIRECTIONS.length + 1);
  expect(() => scrambledSobol({ count: 8, dimensions: 65, key: 'x' })).toThrow();
});

const POINTS = { count: 2048, dimensions: 60, key: 'test' };

// source: identity. A (t, m, s)-net projects to one point per stratum in each dimension.
it('has one point in each of 2048 strata, in every dimension', () => {
  const points = scrambledSobol(POINTS);
  for (let dimension = 0; dimension < 60; dimension++) {
    const strata = new Set<number>();
    for (let k = 0; k < 2048; k++) strata.add(Math.floor((points[k * 60 + dimension] ?? 0) * 2048));
    expect(strata.size).toBe(2048);
  }
});

// source: formula. Plain chance would give pair correlations of normal figures a root mean square of 1/√2048 = 0.022.
// A few pairs of high dimensions are known to be worse than that before 2¹³ points (Joe and Kuo 2008): whoever needs
// exact second moments whitens the draws (lib/ensemble/normal-points.ts).
it('keeps the dimensions of normal draws less correlated than plain chance', () => {
  const normal = scrambledSobol(POINTS).map(normalQuantile);
  let squares = 0;
  for (let a = 0; a < 60; a++) {
    for (let b = 0; b < a; b++) {
      let sum = 0;
      for (let k = 0; k < 2048; k++) sum += (normal[k * 60 + a] ?? 0) * (normal[k * 60 + b] ?? 0);
      squares += (sum / 2048) ** 2;
    }
  }
  expect(Math.sqrt(squares / 1770)).toBeLessThan(0.022);
});

// source: formula. The integral of Π(1 + (xᵢ − ½)/i²) over the cube is 1; plain chance has a standard error of 0.0067 here.
it('integrates a smooth function of 60 figures far better than plain chance', () => {
  const points = scrambledSobol(POINTS);
  let sum = 0;
  for (let k = 0; k < 2048; k++) {
    let product = 1;
    for (let i = 0; i < 60; i++) product *= 1 + ((points[k * 60 + i] ?? 0) - 0.5) / (i + 1) ** 2;
    sum += product;
  }
  expect(Math.abs(sum / 2048 - 1)).toBeLessThan(0.0005);
});
