import { expect, it } from 'vitest';
import { FIXED_ONE, fixedOf } from '@/lib/numeric/fixed-decimal';
import { pitchTolerance2A, pitchTwoThirds } from '@/lib/thread/tolerance';

const value = (fixed: bigint) => Number(fixed) / Number(FIXED_ONE);

// source: hand. D = LE = 1, n = 8: 0.0015 + 0.0015 + 0.015 ÷ 4 = 0.00675, exactly.
it('is exact where the roots are', () => {
  const one = fixedOf(1);
  expect(pitchTolerance2A({ basicMajor: one, engagement: one, tpi: fixedOf(8) })).toBe(fixedOf(0.00675));
  expect(pitchTwoThirds(fixedOf(8))).toBe(fixedOf(0.25));
});

// source: published. ASME B1.1 Td₂ for 2A to six places, worked outside this project: 1/4-28, 9/16-18, 1-14 over one diameter.
it.each([
  [0.25, 28, 0.003322],
  [0.5625, 18, 0.004547],
  [1, 14, 0.005582],
])('%d-%d', (majorIn, tpi, td2) => {
  const size = fixedOf(majorIn);
  const ours = value(pitchTolerance2A({ basicMajor: size, engagement: size, tpi: fixedOf(tpi) }));
  expect(Number(ours.toFixed(6))).toBe(td2);
});
