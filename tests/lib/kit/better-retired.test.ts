import { expect, it } from 'vitest';
import { isBetterRetired } from '@/lib/kit/better-retired';

// source: hand. Common practice, no source: more than three adjustments and a split die is better retired.
it('Q30: a die adjusted more than three times is better retired', () => {
  expect([0, 3, 4].map(isBetterRetired)).toEqual([false, false, true]);
});
