import { expect, it } from 'vitest';
import { pitchMargin } from '@/lib/thread/pitch-margin';

// source: hand. Limits 8.9 and 9.1: the middle is half way, 9.15 is 0.05 over, 8.85 is 0.05 under.
it.each([
  [9, 0.5, 0.1, 0.1, 'within'],
  [9.15, 1.25, -0.05, 0.25, 'over'],
  [8.85, -0.25, 0.25, -0.05, 'under'],
])('%d mm between 8.9 and 9.1', (pitchDiameterMm, share, toMaxMm, toMinMm, zone) => {
  const margin = pitchMargin({ pitchDiameterMm, minMm: 8.9, maxMm: 9.1 });
  expect(margin.zone).toBe(zone);
  expect([margin.share, margin.toMaxMm, margin.toMinMm].map((value) => Number(value.toFixed(9)))).toEqual([
    share,
    toMaxMm,
    toMinMm,
  ]);
});

it('throws on limits that leave no room', () => {
  expect(() => pitchMargin({ pitchDiameterMm: 9, minMm: 9, maxMm: 9 })).toThrow('invariant broken');
});
