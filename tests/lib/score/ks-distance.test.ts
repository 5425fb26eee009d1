import { expect, it } from 'vitest';
import { ksDistance } from '@/lib/score/ks-distance';

// source: hand. Steps of ⅓: at 0.9 the third step starts at ⅔, 0.9 − 0.667 = 0.2333; at 0.1 the first ends at ⅓, 0.2333.
it('is the widest gap to the even spread, on either side of a step', () => {
  expect(ksDistance([0.9, 0.1, 0.5])).toBeCloseTo(0.23333333, 8);
  expect(ksDistance([1, 1])).toBe(1);
  expect(ksDistance([])).toBe(0);
});
