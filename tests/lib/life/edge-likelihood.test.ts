import { describe, expect, it } from 'vitest';
import { edgeTerms, type LifeEvidence, roomForTerms } from '@/lib/life/edge-likelihood';
import { density, scaleFromMedian, survival } from '@/lib/life/weibull';

const POINTS = [0.6, 1, 2.2, 6].flatMap((shape) =>
  [0.2, 1, 1.6].flatMap((share) => [1e-4, 0.05, 0.8, 30].map((ratio) => ({ shape, share, ratio }))),
);
const KINDS: [LifeEvidence, boolean][] = [
  ['beyond', false],
  ['exactly', false],
  ['between', false],
  ['between', true],
];
const MEDIAN = 1300;

function terms(evidence: LifeEvidence, fromZero: boolean, figures: ArrayLike<number>) {
  const room = roomForTerms();
  edgeTerms(evidence, figures, fromZero, room);
  return room;
}

describe.each(POINTS)('shape $shape, age $share medians, row $ratio of it', ({ shape, share, ratio }) => {
  const age = MEDIAN * share;
  const figures = [Math.log(shape), Math.log(MEDIAN), Math.log(age), Math.log(ratio)];
  const life = { shape, scale: scaleFromMedian({ shape, median: MEDIAN }) };

  // source: formula. The definitions, in plain survival and density.
  it('is the log of survival, of density, and of the chance of the interval', () => {
    expect(Math.exp(terms('beyond', false, figures).value)).toBeCloseTo(survival(life, age), 12);
    expect(Math.exp(terms('exactly', false, figures).value) / age / density(life, age)).toBeCloseTo(1, 11);
    const chance = survival(life, age) - survival(life, age * (1 + ratio));
    expect(Math.abs(Math.exp(terms('between', false, figures).value) - chance)).toBeLessThan(1e-14);
    expect(
      Math.abs(Math.exp(terms('between', true, figures).value) - (1 - survival(life, age))),
    ).toBeLessThan(1e-14);
  });

  // source: formula. Central differences of value and gradient; steps of 1e-5, so about 1e-9 relative.
  it.each(KINDS)('has the right derivatives (%s, from zero %s)', (evidence, fromZero) => {
    const here = terms(evidence, fromZero, figures);
    for (let a = 0; a < 4; a++) {
      const shifted = (step: number) =>
        terms(
          evidence,
          fromZero,
          figures.map((value, i) => (i === a ? value + step : value)),
        );
      const [up, down] = [shifted(1e-5), shifted(-1e-5)];
      const size = 1 + Math.abs(here.value) + Math.abs(here.gradient[a] ?? 0);
      expect(Math.abs((up.value - down.value) / 2e-5 - (here.gradient[a] ?? 0))).toBeLessThan(1e-7 * size);
      for (let b = 0; b < 4; b++) {
        const slope = ((up.gradient[b] ?? 0) - (down.gradient[b] ?? 0)) / 2e-5;
        const bend = here.hessian[a * 4 + b] ?? 0;
        expect(Math.abs(slope - bend)).toBeLessThan(1e-7 * (size + Math.abs(bend)));
      }
    }
  });
});

// source: formula. A narrow row is the density times its width.
it('keeps its digits for a row of one part in ten million', () => {
  const figures = [Math.log(2), Math.log(MEDIAN), Math.log(1000), Math.log(1e-7)];
  const exact = terms('exactly', false, figures);
  const narrow = terms('between', false, figures);
  expect(Math.abs(narrow.value - (exact.value + Math.log(1e-7)))).toBeLessThan(2e-7);
  for (const i of [0, 1])
    expect(Math.abs((narrow.gradient[i] ?? 0) - (exact.gradient[i] ?? 0))).toBeLessThan(1e-6);
  expect(Math.abs((narrow.hessian[5] ?? 0) - (exact.hessian[5] ?? 0))).toBeLessThan(1e-6);
});

it('stays a number far out', () => {
  for (const logAge of [-700, 0, 200]) {
    const room = terms('between', false, [0.5, 7, logAge, 3]);
    expect(room.value <= 0).toBe(true);
    expect([...room.gradient, ...room.hessian].some(Number.isNaN)).toBe(false);
  }
});
