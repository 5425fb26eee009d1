import { describe, expect, it } from 'vitest';
import { edgeTerms, type LifeEvidence, roomForTerms } from '@/lib/life/edge-likelihood';
import { logLogisticTerms } from '@/lib/life/log-logistic-terms';

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
  logLogisticTerms(evidence, figures, fromZero, room);
  return room;
}

describe.each(POINTS)('shape $shape, age $share medians, row $ratio of it', ({ shape, share, ratio }) => {
  const age = MEDIAN * share;
  const figures = [Math.log(shape), Math.log(MEDIAN), Math.log(age), Math.log(ratio)];
  const b = Math.SQRT2 * shape;
  const worn = (t: number): number => (t / MEDIAN) ** b / (1 + (t / MEDIAN) ** b);

  // source: formula. Textbook log-logistic: F = u/(1 + u), u = (t/m)^b; density b·u/(t·(1 + u)²).
  it('is the log of survival, of density, and of the chance of the interval', () => {
    expect(Math.exp(terms('beyond', false, figures).value)).toBeCloseTo(1 - worn(age), 12);
    const density = (b / age) * worn(age) * (1 - worn(age));
    expect(Math.exp(terms('exactly', false, figures).value) / age / density).toBeCloseTo(1, 11);
    const chance = worn(age * (1 + ratio)) - worn(age);
    expect(Math.abs(Math.exp(terms('between', false, figures).value) - chance)).toBeLessThan(1e-14);
    expect(Math.abs(Math.exp(terms('between', true, figures).value) - worn(age))).toBeLessThan(1e-14);
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
      for (let c = 0; c < 4; c++) {
        const slope = ((up.gradient[c] ?? 0) - (down.gradient[c] ?? 0)) / 2e-5;
        const bend = here.hessian[a * 4 + c] ?? 0;
        expect(Math.abs(slope - bend)).toBeLessThan(1e-7 * (size + Math.abs(bend)));
      }
    }
  });
});

it('stays a number far out, and is what edgeTerms says of this law', () => {
  for (const logAge of [-700, 0, 200]) {
    const room = terms('between', false, [0.5, 7, logAge, 3]);
    expect(room.value <= 0).toBe(true);
    expect([...room.gradient, ...room.hessian].some(Number.isNaN)).toBe(false);
    const same = roomForTerms();
    edgeTerms('between', [0.5, 7, logAge, 3], false, same, 'log-logistic');
    expect(same).toEqual(room);
  }
});
