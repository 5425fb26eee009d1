import { expect, it } from 'vitest';
import { compensatedSum } from '@/lib/numeric/sum';

// source: hand. 1 + 1e100 + 1 − 1e100 = 2; plain addition gives 0.
it('keeps small figures beside large ones', () => {
  const values = [1, 1e100, 1, -1e100];
  expect(compensatedSum(values)).toBe(2);
  expect(values.reduce((sum, value) => sum + value, 0)).toBe(0);
});

// source: hand. A million tenths.
it('adds a million tenths to a hundred thousand', () => {
  expect(compensatedSum(new Float64Array(1_000_000).fill(0.1))).toBe(100_000);
  expect(compensatedSum([])).toBe(0);
});
