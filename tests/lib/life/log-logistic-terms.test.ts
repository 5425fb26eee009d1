import { describe, expect, it } from 'vitest';
import { edgeTerms, type LifeEvidence, roomForTerms } from '@/lib/life/edge-likelihood';
import { logLogisticTerms } from '@/lib/life/log-logistic-terms';
import { expectRightDerivatives, KINDS, MEDIAN, POINTS } from '../../support/edge-derivatives';

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
    expectRightDerivatives((at) => terms(evidence, fromZero, at), figures);
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
