import { expect, it } from 'vitest';
import {
  hashKey,
  stratifiedExponentials,
  stratifiedUniforms,
  streamOfKey,
} from '@/lib/numeric/random-stream';

// source: identity. A key names its stream.
it('gives the same figures for the same key, others for another', () => {
  const [first, again, other] = [streamOfKey('D-38-11'), streamOfKey('D-38-11'), streamOfKey('D-38-12')];
  const take = (stream: () => number): number[] => Array.from({ length: 50 }, stream);
  const figures = take(first);
  expect(take(again)).toEqual(figures);
  expect(take(other).filter((value) => figures.includes(value))).toEqual([]);
  expect(hashKey('a', 1)).not.toBe(hashKey('a', 2));
});

// source: formula. Chi-square over 64 cells, 63 degrees of freedom: 99.99 % point 116 (R: qchisq(.9999, 63) = 115.9),
// and pairs of neighbours over 8 × 8 cells in the same way. Deterministic: passes or fails for good.
it.each(['D-25-01', 'B-56H-03', 'new:die-38:0', ''])('is even, singly and in pairs, for key "%s"', (key) => {
  const stream = streamOfKey(key);
  const singles = new Float64Array(64);
  const pairs = new Float64Array(64);
  const n = 20_000;
  for (let i = 0; i < n; i++) {
    const [u, v] = [stream(), stream()];
    expect(u > 0 && u < 1).toBe(true);
    singles[Math.floor(u * 64)] = (singles[Math.floor(u * 64)] ?? 0) + 1;
    const cell = Math.floor(u * 8) * 8 + Math.floor(v * 8);
    pairs[cell] = (pairs[cell] ?? 0) + 1;
  }
  const chiSquare = (cells: Float64Array): number =>
    cells.reduce((sum, c) => sum + (c - n / 64) ** 2 / (n / 64), 0);
  expect(chiSquare(singles)).toBeLessThan(116);
  expect(chiSquare(pairs)).toBeLessThan(116);
});

// source: identity. One figure in each stratum; two keys are unrelated (correlation within 4/√n of 0).
it('stratifies, and shuffles independently by key', () => {
  const n = 2048;
  const [a, b] = [stratifiedUniforms('tool-1', n), stratifiedUniforms('tool-2', n)];
  expect(Array.from(a, (u) => Math.floor(u * n)).sort((x, y) => x - y)).toEqual(
    Array.from({ length: n }, (_, i) => i),
  );
  let product = 0;
  for (let i = 0; i < n; i++) product += ((a[i] ?? 0) - 0.5) * ((b[i] ?? 0) - 0.5) * 12;
  expect(Math.abs(product / n)).toBeLessThan(4 / Math.sqrt(n));
});

// source: formula. One figure to each of n equally likely strata of the exponential law: mean 1, and 1 − e^(−x) evenly spread.
it('spreads exponential figures one to a stratum, shuffled by the key', () => {
  const n = 1024;
  const values = stratifiedExponentials('tool-1', n);
  const strata = Array.from(values, (x) => Math.floor(-Math.expm1(-x) * n));
  expect(strata.toSorted((a, b) => a - b)).toEqual(Array.from({ length: n }, (_, i) => i));
  expect(strata).not.toEqual(strata.toSorted((a, b) => a - b));
  expect(Math.abs(values.reduce((sum, x) => sum + x, 0) / n - 1)).toBeLessThan(1 / n);
  expect(stratifiedExponentials('tool-1', n)).toEqual(values);
  expect(stratifiedExponentials('tool-2', n)).not.toEqual(values);
});
