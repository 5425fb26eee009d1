import { expect, it } from 'vitest';
import { tensileStressAreaIn2 } from '@/lib/thread/stress-area';

// source: formula. D = 1.9743, n = 1: the mean diameter is 1, the area a circle of that.
it('is a circle at the mean diameter', () => {
  expect(tensileStressAreaIn2({ majorIn: 1.9743, tpi: 1 })).toBeCloseTo(Math.PI / 4, 12);
});

it('throws on a thread deeper than its diameter', () => {
  expect(() => tensileStressAreaIn2({ majorIn: 0.1, tpi: 8 })).toThrow('invariant broken');
});
