import fc from 'fast-check';
import { expect, it } from 'vitest';
import { decideConformity, guardBandOf } from '@/lib/gauge/decision-rule';
import { DECISION_RULES } from '@/lib/shop/calibration';

const limits = { lower: -5, upper: 5 };
const certified = (error: number, expandedUncertainty = 2) => ({
  error,
  expandedUncertainty,
  coverageFactor: 2,
});

// source: published, from memory. ISO 14253-1: conformity is proven within the limits drawn in by U, non-conformity
// beyond the limits moved out by U, and in between neither is.
it.each([
  [0, 'accept'],
  [3, 'accept'],
  [-3, 'accept'],
  [3.1, 'between'],
  [5, 'between'],
  [7, 'between'],
  [7.1, 'reject'],
  [-7.1, 'reject'],
])('an error of %s with U 2 against ±5: %s', (error, decision) => {
  expect(decideConformity(certified(error), limits, 'guarded').decision).toBe(decision);
});

// source: hand. Without a guard band a result counts as it is; at the limit it is in.
it('simple acceptance knows no between', () => {
  const decided = [4.9, 5, 5.1].map((error) => decideConformity(certified(error), limits, 'simple').decision);
  expect(decided).toEqual(['accept', 'accept', 'reject']);
});

// source: formula. w = 1.6448536… · U/k: U 2 at k 2 gives 1.6448536….
it('the 95 % band follows the standard uncertainty, whatever k was printed', () => {
  expect(guardBandOf('guarded-95', certified(0))).toBeCloseTo(1.644853626951473, 14);
  const k3 = { error: 0, expandedUncertainty: 3, coverageFactor: 3 };
  expect(guardBandOf('guarded-95', k3)).toBeCloseTo(1.644853626951473, 14);
});

// source: identity. What a stricter rule accepts a laxer one accepts; accepted by 95 % has at least that probability at one limit.
it('stricter rules accept less, and what 95 % accepts is at least as sure', () => {
  const error = fc.double({ min: -12, max: 12, noNaN: true });
  const uncertainty = fc.double({ min: 0.01, max: 4, noNaN: true });
  fc.assert(
    fc.property(error, uncertainty, (e, U) => {
      const accepts = (rule: (typeof DECISION_RULES)[number]) =>
        decideConformity(certified(e, U), { upper: 5 }, rule);
      if (accepts('guarded').decision === 'accept') expect(accepts('guarded-95').decision).toBe('accept');
      if (accepts('guarded-95').decision === 'accept') {
        expect(accepts('simple').decision).toBe('accept');
        expect(accepts('guarded-95').probability).toBeGreaterThanOrEqual(0.95 - 1e-12);
      }
    }),
  );
});

it('carries the rule that decided', () => {
  for (const rule of DECISION_RULES) expect(decideConformity(certified(0), limits, rule).rule).toBe(rule);
});
