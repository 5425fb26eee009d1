import { describe, expect, it } from 'vitest';
import { residualQuantile } from '@/lib/life/weibull';
import { fusedResidual, type ReadingSum } from '@/lib/reading/fused-residual';

interface Seen {
  readonly at: number;
  readonly worn: number;
  readonly sd: number;
}

function sumOf(seen: readonly Seen[], power = 1): ReadingSum {
  const square = seen.reduce((sum, { at, sd }) => sum + (at ** power / sd) ** 2, 0);
  const linear = seen.reduce((sum, { at, worn, sd }) => sum + (worn * at ** power) / sd ** 2, 0);
  return { square, linear, power };
}

/** Median of what is left by plain summation of the density over 400,000 steps of the life itself. */
function bruteMedian(
  { shape, scale, age }: { shape: number; scale: number; age: number },
  seen: readonly Seen[],
  power: number,
): number {
  const steps = 400_000;
  const width = (scale * 40 ** (1 / shape)) / steps;
  const weights = new Float64Array(steps);
  let total = 0;
  for (let i = 0; i < steps; i++) {
    const life = age + (i + 0.5) * width;
    let log = (shape - 1) * Math.log(life / scale) - (life / scale) ** shape + (age / scale) ** shape;
    for (const { at, worn, sd } of seen) log -= 0.5 * ((worn - (at / life) ** power) / sd) ** 2;
    weights[i] = Math.exp(log);
    total += weights[i] ?? 0;
  }
  let reached = 0;
  for (let i = 0; i < steps; i++) {
    reached += weights[i] ?? 0;
    if (reached >= total / 2) return (i + 0.5) * width;
  }
  throw new Error('no median');
}

const LIFE = { shape: 2.2, scale: 1200 };
const CASES: readonly (readonly [string, number, readonly Seen[], number])[] = [
  ['worn early', 300, [{ at: 300, worn: 0.9, sd: 0.15 }], 1],
  ['fresh when old', 1500, [{ at: 1500, worn: 0.2, sd: 0.15 }], 1],
  ['as expected', 700, [{ at: 700, worn: 0.6, sd: 0.15 }], 1],
  [
    'read twice, earlier',
    900,
    [
      { at: 400, worn: 0.4, sd: 0.15 },
      { at: 800, worn: 0.75, sd: 0.12 },
    ],
    1,
  ],
  ['at its limit', 600, [{ at: 600, worn: 1, sd: 0.12 }], 1],
  ['hardly used', 5, [{ at: 5, worn: 0.1, sd: 0.15 }], 1],
  ['with wear that speeds up', 700, [{ at: 700, worn: 0.5, sd: 0.15 }], 1.4],
];

// source: formula. Bayes' rule, p ∝ f(T)·N(w; (X/T)^q, σ), summed step by step over the life; the grid is within 1 %.
it.each(CASES)('matches plain summation for an edge %s', (_name, age, seen, power) => {
  const { shape, scale } = LIFE;
  const left = fusedResidual({ shape, logScale: Math.log(scale), age }, sumOf(seen, power), 0.5);
  const exact = bruteMedian({ shape, scale, age }, seen, power);
  expect(Math.abs(left - exact)).toBeLessThan(0.01 * exact + 0.002 * scale);
});

// source: identity. A reading of no weight leaves the Weibull law as it is, at every quantile.
it.each([0.001, 0.1, 0.5, 0.9, 0.999])('keeps the life without evidence, quantile %d', (share) => {
  const left = fusedResidual(
    { shape: 2.2, logScale: Math.log(1200), age: 400 },
    { square: 0, linear: 0, power: 1 },
    share,
  );
  expect(Math.abs(left / residualQuantile(LIFE, { age: 400, p: share }) - 1)).toBeLessThan(1e-9);
});

describe('a reading', () => {
  const quantile = (age: number, seen: readonly Seen[], share: number): number =>
    fusedResidual({ shape: 2.2, logScale: Math.log(1200), age }, sumOf(seen), share);
  const plain = (age: number, share: number): number => residualQuantile(LIFE, { age, p: share });

  it('as the life would have it moves the middle little and narrows the band', () => {
    const seen = [{ at: 700, worn: 700 / (700 + plain(700, 0.5)), sd: 0.08 }];
    expect(Math.abs(quantile(700, seen, 0.5) / plain(700, 0.5) - 1)).toBeLessThan(0.15);
    const width = quantile(700, seen, 0.9) - quantile(700, seen, 0.1);
    expect(width).toBeLessThan(0.75 * (plain(700, 0.9) - plain(700, 0.1)));
  });

  it('of early wear shortens, a fresh look lengthens', () => {
    expect(quantile(300, [{ at: 300, worn: 0.9, sd: 0.15 }], 0.5)).toBeLessThan(0.4 * plain(300, 0.5));
    expect(quantile(1400, [{ at: 1400, worn: 0.35, sd: 0.15 }], 0.5)).toBeGreaterThan(1.3 * plain(1400, 0.5));
  });

  it.each([1e-6, 1, 1e7])('never leaves what can be, at age %d', (age) => {
    for (const worn of [0, 0.5, 1]) {
      for (const share of [1e-9, 0.5, 1 - 1e-9]) {
        const left = quantile(age, [{ at: age, worn, sd: 0.1 }], share);
        expect(left).toBeGreaterThanOrEqual(0);
        expect(Number.isFinite(left)).toBe(true);
      }
    }
  });
});

// source: formula. The same for a log-logistic life, S = 1/(1 + (t/scale)^b): summed step by step to 400 scales; within 1.5 %.
it.each(CASES)('matches plain summation for a log-logistic edge %s', (_name, age, seen, power) => {
  const [b, scale, steps] = [3.1, 1100, 400_000];
  const width = (400 * scale) / steps;
  const weights = Float64Array.from({ length: steps }, (_, i) => {
    const life = age + (i + 0.5) * width;
    const u = (life / scale) ** b;
    let log = (b - 1) * Math.log(life / scale) - 2 * Math.log(1 + u);
    for (const { at, worn, sd } of seen) log -= 0.5 * ((worn - (at / life) ** power) / sd) ** 2;
    return Math.exp(log);
  });
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  let [reached, at] = [0, 0];
  while (reached < total / 2) reached += weights[at++] ?? 0;
  const exact = (at - 0.5) * width;
  const edge = { shape: b, logScale: Math.log(scale), age, tailed: true };
  const left = fusedResidual(edge, sumOf(seen, power), 0.5);
  expect(Math.abs(left - exact)).toBeLessThan(0.015 * exact + 0.002 * scale);
});
