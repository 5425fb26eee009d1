import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  acceptanceLimits,
  conformityProbability,
  conformityProbabilityWithPrior,
  normalMassWithin,
  posteriorBelief,
  specificRisk,
} from '@/lib/gauge/conformity';
import { relativeMiss } from '../../support/relative-miss';

const near = (a: number, b: number, tolerance: number) => relativeMiss(a, b) <= tolerance;

const value = fc.double({ min: -5, max: 5, noNaN: true });
const sd = fc.double({ min: 0.01, max: 5, noNaN: true });

// source: identity. Inside and outside on either side add up to 1.
it('all chances add up', () => {
  fc.assert(
    fc.property(value, sd, value, sd, (y, u, lower, width) => {
      const m = { value: y, standardUncertainty: u };
      const upper = lower + width;
      const sum =
        conformityProbability(m, { lower, upper }) +
        conformityProbability(m, { upper: lower }) +
        conformityProbability(m, { lower: upper });
      expect(sum).toBeCloseTo(1, 12);
    }),
  );
});

// source: identity. Wider limits never make conformity less likely, and swapping signs changes nothing.
it('grows with the limits and is the same in a mirror', () => {
  fc.assert(
    fc.property(value, sd, value, sd, sd, (y, u, lower, width, more) => {
      const m = { value: y, standardUncertainty: u };
      const p = conformityProbability(m, { lower, upper: lower + width });
      expect(conformityProbability(m, { lower, upper: lower + width + more })).toBeGreaterThanOrEqual(
        p - 1e-15,
      );
      const mirrored = conformityProbability({ ...m, value: -y }, { lower: -lower - width, upper: -lower });
      expect(mirrored).toBeCloseTo(p, 12);
    }),
  );
});

// source: other-software. SciPy norm.sf(9) - norm.sf(10): far out, where 1 − 1 would be 0.
it('keeps its digits in the tail', () => {
  const p = normalMassWithin({ mean: 0, sd: 1 }, { lower: 9, upper: 10 });
  expect(near(p, 1.1285122074236006e-19, 1e-12)).toBe(true);
});

it('a certain value conforms or does not, a limit itself conforming', () => {
  const at = (y: number) =>
    conformityProbability({ value: y, standardUncertainty: 0 }, { lower: 0, upper: 1 });
  expect([at(-0.1), at(0), at(0.5), at(1), at(1.1)]).toEqual([0, 1, 1, 1, 0]);
});

// source: formula. Two equal certainties meet half way with the deviation over √2; a vague belief leaves the measurement.
it('weighs what was known with what was measured', () => {
  const half = posteriorBelief({ mean: 0, sd: 1 }, { value: 2, standardUncertainty: 1 });
  expect(half.mean).toBe(1);
  expect(near(half.sd, Math.SQRT1_2, 1e-15)).toBe(true);
  const vague = posteriorBelief({ mean: 7, sd: 1e200 }, { value: 2, standardUncertainty: 1e-150 });
  expect([vague.mean, vague.sd]).toEqual([2, 1e-150]);
});

// source: identity. With a belief that says nothing, the posterior answer is the flat one.
it('with a vague belief gives the flat answer', () => {
  const m = { value: 13.6, standardUncertainty: 1.8 };
  const limits = { lower: 12.5, upper: 16.3 };
  const flat = conformityProbability(m, limits);
  expect(near(conformityProbabilityWithPrior({ mean: 0, sd: 1e9 }, m, limits), flat, 1e-9)).toBe(true);
  expect(conformityProbabilityWithPrior({ mean: 14.4, sd: 0.3 }, m, limits)).toBeGreaterThan(0.99);
});

// source: identity. At the acceptance limit of a guard band k·u the risk of one limit is that of the formula.
it('the guard band carries its specific risk', () => {
  const limits = acceptanceLimits({ upper: 10 }, 2 * 0.5);
  const p = conformityProbability({ value: limits.upper ?? 0, standardUncertainty: 0.5 }, { upper: 10 });
  expect(near(1 - p, specificRisk(2), 1e-12)).toBe(true);
});

it('throws on what is no tolerance', () => {
  const m = { value: 0, standardUncertainty: 1 };
  expect(() => conformityProbability(m, { lower: 1, upper: 1 })).toThrow('crossed');
  expect(() => conformityProbability({ ...m, standardUncertainty: -1 }, {})).toThrow('negative');
  expect(() => posteriorBelief({ mean: 0, sd: 0 }, m)).toThrow('above 0');
});
