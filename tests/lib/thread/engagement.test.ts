import { expect, it } from 'vitest';
import { FIXED_ONE } from '@/lib/numeric/fixed-decimal';
import { engagementFixed } from '@/lib/thread/engagement';

// source: published, from memory. ASME B1.1: one diameter for UNC, UNF, 4-, 6- and 8-UN, nine pitches for the rest; 1-14 as when fine.
it.each([
  [0.75, 16, 'UNF', 0.75],
  [0.75, 10, 'UNC', 0.75],
  [2, 8, 'UN', 2],
  [2, 12, 'UN', 0.75],
  [0.5, 28, 'UNEF', 9 / 28],
  [2.5, 18, 'UNS', 0.5],
  [1, 14, 'UNS', 1],
  [1.5, 14, 'UNS', 9 / 14],
] as const)('%d-%d %s is toleranced for %d in', (basicMajorIn, tpi, series, engagementIn) => {
  const ours = Number(engagementFixed({ basicMajorIn, tpi, series })) / Number(FIXED_ONE);
  expect(ours).toBeCloseTo(engagementIn, 12);
});
