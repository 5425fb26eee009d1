import { describe, expect, it } from 'vitest';
import { reliabilityOf } from '@/lib/score/reliability';

// source: hand. Two cases near 0.1 (none true), two near 0.9 (one true): errors 0.1 and 0.4 at half the weight each.
describe('a reliability diagram', () => {
  const cases = [
    { probability: 0.05, outcome: false },
    { probability: 0.15, outcome: false },
    { probability: 0.85, outcome: true },
    { probability: 0.95, outcome: false },
  ];

  it('sets what came true beside what was said', () => {
    const { bins, calibrationError } = reliabilityOf(cases);
    expect(bins.map(({ count, observed }) => [count, observed])).toEqual([
      [2, 0],
      [2, 0.5],
    ]);
    expect(calibrationError).toBeCloseTo(0.25, 12);
  });

  it('may hold as many cases in every bin', () => {
    const { bins } = reliabilityOf(cases, { bins: 4, binning: 'equal-count' });
    expect(bins.map(({ count }) => count)).toEqual([1, 1, 1, 1]);
  });

  it('keeps certain cases in the last bin, and shows how little one case says', () => {
    const { bins } = reliabilityOf([{ probability: 1, outcome: true }], { bins: 10 });
    expect(bins).toHaveLength(1);
    expect(bins[0]?.high).toBe(1);
    expect(bins[0]?.low).toBeLessThan(0.25);
  });

  it('needs cases', () => {
    expect(() => reliabilityOf([])).toThrow('needs cases');
  });
});
