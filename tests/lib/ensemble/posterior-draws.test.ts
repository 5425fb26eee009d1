import { describe, expect, it } from 'vitest';
import { drawPosterior, posteriorDraws } from '@/lib/ensemble/posterior-draws';
import { fitLife } from '@/lib/life/fit-life';
import { defaultLifePriors } from '@/lib/life/priors';
import { cut, edge, NONE } from '@/tests/support/edge-histories';
import { fitted, HISTORIES } from '@/tests/support/small-shop';

const PRIORS = {
  ...defaultLifePriors('die', { referenceMaterialId: 'ref', materials: [] }),
  logLogisticChance: 0,
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

/** Cumulative hazard of the two laws at an age, with the scatter of the log life equal: ln 2·(t/m)^β, ln(1 + (t/m)^(√2·β)). */
const GATHERED = {
  weibull: (x: number, shape: number): number => Math.LN2 * x ** shape,
  'log-logistic': (x: number, shape: number): number => Math.log(1 + x ** (Math.SQRT2 * shape)),
};
/** Log of the density by log age, by a central difference of the survival. */
function logDensity(law: keyof typeof GATHERED, x: number, shape: number): number {
  const lasts = (at: number): number => Math.exp(-GATHERED[law](at, shape));
  return Math.log((lasts(x * (1 - 1e-5)) - lasts(x * (1 + 1e-5))) / 2e-5);
}

/** Mean and spread of ln shape and ln median, and the evidence, by plain summation over a grid of both. */
function byQuadrature(law: keyof typeof GATHERED = 'weibull') {
  const sums = { weight: 0, shape: 0, median: 0, shapes: 0, medians: 0 };
  for (let s = -1.5; s <= 2.5; s += 0.01) {
    for (let m = 4; m <= 12; m += 0.02) {
      const shape = Math.exp(s);
      const scaled = (age: number): number => age / Math.exp(m);
      let log = -0.5 * ((s - Math.LN2) / 0.35) ** 2 - 0.5 * ((m - Math.log(1206)) / 0.7) ** 2;
      log += logDensity(law, scaled(300), shape);
      for (const age of [700, 1500, 2600]) log -= GATHERED[law](scaled(age), shape);
      const weight = Math.exp(log);
      if (!(weight > 0)) continue;
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
    evidence: sums.weight,
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

// source: formula. Bayes' rule over the two laws, each summed over the grid: share of the log-logistic one and the mixture's
// means, to 2 % of a spread and 0.02 of a share (256 and more draws' worth).
describe('two laws of life', () => {
  const fit = fitLife({ kind: 'die', priors: { ...PRIORS, logLogisticChance: 0.4 }, histories: LEANING });
  if (!fit.ok) throw new Error(fit.sentence);
  const { figures, logLogistic } = drawPosterior(fit, 4096);
  const [weibull, tailed] = [byQuadrature('weibull'), byQuadrature('log-logistic')];
  const share = (0.4 * tailed.evidence) / (0.4 * tailed.evidence + 0.6 * weibull.evidence);

  it('share the draws as the log leaves them', () => {
    const drawn = logLogistic.reduce((sum, one) => sum + one, 0) / logLogistic.length;
    expect(Math.abs(drawn - share)).toBeLessThan(0.02);
    expect(Math.abs(share - 0.4)).toBeGreaterThan(0.04);
  });

  // source: identity. Without a log the share is what was believed, to one draw.
  it.each([0.1, 0.25, 1 / 3, 0.5])(
    'share them as believed before there is a log, chance %d',
    (logLogisticChance) => {
      const before = fitLife({ kind: 'die', priors: { ...PRIORS, logLogisticChance }, histories: [] });
      if (!before.ok) throw new Error(before.sentence);
      const drawn = drawPosterior(before, 2048).logLogistic.reduce((sum, one) => sum + one, 0);
      expect(Math.abs(drawn - logLogisticChance * 2048)).toBeLessThanOrEqual(1);
    },
  );

  // source: identity. Two kinds are independent: which law one of them has in a draw says nothing of the other's; 4 standard errors.
  it('fall on the draws of two kinds independently', () => {
    const priors = { ...PRIORS, logLogisticChance: 0.5 };
    const [die, blade] = (['die', 'blade'] as const).map((kind) => {
      const before = fitLife({ kind, priors, histories: [] });
      if (!before.ok) throw new Error(before.sentence);
      return drawPosterior(before, 2048).logLogistic;
    });
    const both = die?.reduce((sum, one, k) => sum + one * (blade?.[k] ?? 0), 0) ?? 0;
    expect(Math.abs(both - 2048 / 4)).toBeLessThan(4 * Math.sqrt(2048 / 16));
  });

  it.each([
    ['shape', 0],
    ['median', 1],
  ] as const)('each have the %s that is theirs', (name, index) => {
    for (const [law, exact] of [weibull, tailed].entries()) {
      const own = (figures[index] ?? new Float64Array(0)).filter((_, k) => logLogistic[k] === law);
      const mean = own.reduce((sum, value) => sum + value, 0) / own.length;
      expect(Math.abs(mean - exact[name].mean) / exact[name].sd).toBeLessThan(0.04);
    }
  });

  it('are one where the shape is not a belief, or the other has no chance', () => {
    const sure = { ...PRIORS, logLogisticChance: 0.4, logShape: { form: 'fixed', value: 0.7 } } as const;
    for (const priors of [sure, PRIORS]) {
      const one = fitLife({ kind: 'die', priors, histories: LEANING });
      if (!one.ok) throw new Error(one.sentence);
      expect(drawPosterior(one, 256).logLogistic.every((law) => law === 0)).toBe(true);
    }
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
