import { expect, it } from 'vitest';
import {
  addBend,
  addByHazard,
  addGradient,
  addOuter,
  growthOf,
  LOG_LN2,
  roomForTerms,
} from '@/lib/life/edge-terms';

// source: hand. v = (1, 2, 3, 4), factor 2.
it('adds a slope and an outer product', () => {
  const out = roomForTerms();
  addGradient(out, 2, 1, 2, 3, 4);
  addOuter(out, 2, 1, 2, 3, 4);
  expect([...out.gradient]).toEqual([2, 4, 6, 8]);
  expect([...out.hessian]).toEqual([2, 4, 6, 8, 4, 8, 12, 16, 6, 12, 18, 24, 8, 16, 24, 32]);
});

// source: formula. z = c + β·(ln X − ln m), β = e^s: by (s, s) z − c, by (s, m) −β, by (s, l) β.
it('adds the bends of z, and a term of z by the chain rule', () => {
  const bent = roomForTerms();
  addBend(bent, 2, 0.5, 3);
  expect([...bent.hessian]).toEqual([1, -6, 6, 0, -6, 0, 0, 0, 6, 0, 0, 0, 0, 0, 0, 0]);
  const whole = roomForTerms();
  addByHazard({ first: 2, second: 0, z: LOG_LN2 + 0.5, shape: 3 }, whole);
  expect(
    whole.hessian.map((value, i) => value - (bent.hessian[i] ?? 0)).every((miss) => Math.abs(miss) < 1e-12),
  ).toBe(true);
  expect([...whole.gradient].map((value) => Math.round(value * 1e12) / 1e12)).toEqual([1, -6, 6, 0]);
});

// source: formula. ln(e^x − 1) by ln x: central differences.
it.each([1e-8, 0.2, 3, 800])('grows as it should at %d', (x) => {
  const at = (shift: number) => growthOf(x * Math.exp(shift));
  const { value, first, second } = growthOf(x);
  expect(Math.abs(value - (x > 30 ? x : Math.log(Math.expm1(x))))).toBeLessThan(1e-12 * Math.max(1, x));
  const size = 1e-6 * Math.max(1, x);
  expect(Math.abs((at(1e-5).value - at(-1e-5).value) / 2e-5 - first)).toBeLessThan(size);
  expect(Math.abs((at(1e-5).first - at(-1e-5).first) / 2e-5 - second)).toBeLessThan(size);
});
