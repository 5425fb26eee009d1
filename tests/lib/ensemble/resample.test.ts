import { describe, expect, it } from 'vitest';
import { shareWeights, systematicPicks } from '@/lib/ensemble/resample';
import { streamOfKey } from '@/lib/numeric/random-stream';

// source: hand. Weights 1, 1, 2 are shares ¼, ¼, ½; 1/(1/16 + 1/16 + 1/4) = 8/3 draws' worth.
it('turns log weights into shares', () => {
  const { shares, effective, trust } = shareWeights(Float64Array.of(0, 0, Math.LN2));
  expect([...shares].map((share) => share.toFixed(12))).toEqual([
    '0.250000000000',
    '0.250000000000',
    '0.500000000000',
  ]);
  expect(effective).toBeCloseTo(8 / 3, 12);
  expect(trust).toBe(1);
});

describe('weights that hang on one draw', () => {
  const wild = Float64Array.from({ length: 1000 }, (_, k) => (k === 7 ? 60 : Math.sin(k)));

  it('are shrunk until they are worth the floor, and no further', () => {
    const { effective, trust } = shareWeights(wild, 100);
    expect(trust).toBeGreaterThan(0);
    expect(trust).toBeLessThan(1);
    expect(effective).toBeGreaterThanOrEqual(100);
    expect(effective).toBeLessThan(101);
  });

  it('that are impossible or unbounded leave the draws as they were', () => {
    const { shares } = shareWeights(
      Float64Array.of(0, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY),
      2.9,
    );
    expect([...shares].every((share) => Math.abs(share - 1 / 3) < 0.2)).toBe(true);
  });
});

describe('systematic picks', () => {
  const random = streamOfKey('resample');
  const shares = shareWeights(Float64Array.from({ length: 500 }, () => 2 * random())).shares;
  const along = Float64Array.from(shares, () => random());
  const picks = systematicPicks(shares, along, 2048);

  // source: formula. Systematic resampling takes each draw floor or ceiling of share·count times, give or take its place.
  it('takes every draw as often as its share says, to within one', () => {
    const times = new Float64Array(500);
    for (const k of picks) times[k] = (times[k] ?? 0) + 1;
    times.forEach((count, k) => {
      expect(Math.abs(count - (shares[k] ?? 0) * 2048)).toBeLessThan(1);
    });
  });

  // source: formula. The share below any value of `along` is kept to within one draw.
  it('keeps the spread of what it was sorted by', () => {
    for (const limit of [0.1, 0.5, 0.77]) {
      const wanted = shares.reduce((sum, share, k) => sum + ((along[k] ?? 0) < limit ? share : 0), 0);
      const got = picks.reduce((sum, k) => sum + ((along[k] ?? 0) < limit ? 1 : 0), 0) / 2048;
      expect(Math.abs(got - wanted)).toBeLessThan(1 / 2048);
    }
  });

  it('returns even draws in their own order', () => {
    const even = new Float64Array(64).fill(1 / 64);
    expect([...systematicPicks(even, even, 64)]).toEqual(Array.from({ length: 64 }, (_, k) => k));
  });
});
