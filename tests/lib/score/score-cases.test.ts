import { expect, it } from 'vitest';
import { scoreCases } from '@/lib/score/score-cases';

// source: hand. Half came true; (0.2² + 0.4²)/2 = 0.1; skill 1 − 0.1/0.25 = 0.6.
it('scores a set of cases', () => {
  const score = scoreCases([
    { probability: 0.8, outcome: true },
    { probability: 0.4, outcome: false },
  ]);
  expect(score).toMatchObject({ count: 2, baseRate: 0.5 });
  expect(score?.brier).toBeCloseTo(0.1, 12);
  expect(score?.skill).toBeCloseTo(0.6, 12);
  expect(scoreCases([])).toBeUndefined();
});
