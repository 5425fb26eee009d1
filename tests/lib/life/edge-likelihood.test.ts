import { describe, expect, it } from 'vitest';
import { edgeTerms, type LifeEvidence, roomForTerms } from '@/lib/life/edge-likelihood';
import { density, scaleFromMedian, survival } from '@/lib/life/weibull';
import { expectRightDerivatives, KINDS, MEDIAN, POINTS } from '../../support/edge-derivatives';

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
    expectRightDerivatives((at) => terms(evidence, fromZero, at), figures);
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
