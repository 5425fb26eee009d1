import { describe, expect, it } from 'vitest';
import { posteriorDraws } from '@/lib/ensemble/posterior-draws';
import { fitLife } from '@/lib/life/fit-life';
import { defaultLifePriors } from '@/lib/life/priors';
import { cut, edge, NONE } from '@/tests/support/edge-histories';
import { fitted, HISTORIES } from '@/tests/support/small-shop';

const PRIORS = {
  ...defaultLifePriors('die', { referenceMaterialId: 'ref', materials: [] }),
  sizeExponent: NONE,
  part: NONE,
  regrind: NONE,
  dry: NONE,
  rework: NONE,
};
/** One worn at 300 turns, three still cutting far beyond: the posterior of the median leans hard. */
const LEANING = [
  edge('A', { before: [cut(300)], end: 'worn' }),
  ...[700, 1500, 2600].map((base, i) => edge(`B${i}`, { before: [cut(base)] })),
];

/** Mean and spread of ln shape and ln median by plain summation over a grid of both. */
function byQuadrature() {
  const sums = { weight: 0, shape: 0, median: 0, shapes: 0, medians: 0 };
  for (let s = -1.5; s <= 2.5; s += 0.01) {
    for (let m = 4; m <= 12; m += 0.02) {
      const shape = Math.exp(s);
      const hazard = (age: number): number => Math.LN2 * (age / Math.exp(m)) ** shape;
      let log = -0.5 * ((s - Math.LN2) / 0.35) ** 2 - 0.5 * ((m - Math.log(1206)) / 0.7) ** 2;
      log += s + Math.log(hazard(300)) - hazard(300);
      for (const age of [700, 1500, 2600]) log -= hazard(age);
      const weight = Math.exp(log);
      sums.weight += weight;
      sums.shape += weight * s;
      sums.median += weight * m;
      sums.shapes += weight * s * s;
      sums.medians += weight * m * m;
    }
  }
  const mean = (sum: number): number => sum / sums.weight;
  const sd = (sum: number, squares: number): number => Math.sqrt(mean(squares) - mean(sum) ** 2);
  return {
    shape: { mean: mean(sums.shape), sd: sd(sums.shape, sums.shapes) },
    median: { mean: mean(sums.median), sd: sd(sums.median, sums.medians) },
  };
}

// source: formula. Bayes' rule summed over a grid, written here; 2 % of a spread in the means, 3 % in the spreads.
describe('a posterior that leans', () => {
  const fit = fitLife({ kind: 'die', priors: PRIORS, histories: LEANING });
  if (!fit.ok) throw new Error(fit.sentence);
  const draws = posteriorDraws(fit, 2048);
  const exact = byQuadrature();

  it.each([
    ['shape', 0],
    ['median', 1],
  ] as const)('is matched in its %s, which its most probable value is not', (name, index) => {
    const column = draws[index] ?? new Float64Array(0);
    const mean = column.reduce((sum, value) => sum + value, 0) / column.length;
    const sd = Math.sqrt(column.reduce((sum, value) => sum + (value - mean) ** 2, 0) / column.length);
    expect(Math.abs(mean - exact[name].mean) / exact[name].sd).toBeLessThan(0.02);
    expect(Math.abs(sd / exact[name].sd - 1)).toBeLessThan(0.03);
  });

  it('would be missed by the mode', () => {
    expect(Math.abs((fit.theta[1] ?? 0) - exact.median.mean) / exact.median.sd).toBeGreaterThan(0.1);
  });
});

it('gives the same digits every time, whatever the order of the histories', () => {
  const once = posteriorDraws(fitted(HISTORIES), 512);
  expect(posteriorDraws(fitted([...HISTORIES].reverse()), 512)).toEqual(once);
});

it('serves a fit that came without its edges', () => {
  const { model: _, ...bare } = fitted(HISTORIES);
  expect(posteriorDraws(bare, 256).every((column) => column.every(Number.isFinite))).toBe(true);
});

describe('data with hardly anything in them', () => {
  const many = (count: number, make: (i: number) => Parameters<typeof edge>[1]) =>
    Array.from({ length: count }, (_, i) => edge(`M${i}`, make(i)));
  it.each([
    ['none at all', []],
    ['one worn', [edge('A', { before: [cut(1)], end: 'worn' })]],
    ['nothing worn', many(30, () => ({ before: [cut(1e7)] }))],
    ['all alike', many(40, () => ({ before: [cut(1000)], end: 'worn' }))],
    ['nothing cut', many(3, () => ({ before: [] }))],
    ['a material seen once', [edge('A', { before: [cut(50, { materialId: 'odd' })], end: 'worn' })]],
    ['from 1 to 10,000,000 turns', many(8, (i) => ({ before: [cut(10 ** i)], end: 'worn' }))],
  ] as const)('gives finite figures that differ: %s', (_name, histories) => {
    const fit = fitted([...histories]);
    const draws = posteriorDraws(fit, 256);
    for (const index of fit.layout.free) {
      const column = draws[index] ?? new Float64Array(0);
      expect(column.every(Number.isFinite)).toBe(true);
      expect(new Set(column).size).toBeGreaterThan(32);
    }
  });
});
