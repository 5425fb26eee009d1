import { expect, it } from 'vitest';
import { dieVerdict } from '@/lib/outlook/die-verdict';

// source: hand. At the required probability it goes, from even chances on with a standby, below that it is swapped.
it.each([
  [0.9, 0.9, 'go'],
  [0.89, 0.9, 'go-with-standby'],
  [0.5, 0.9, 'go-with-standby'],
  [0.499, 0.9, 'swap'],
  [0.92, 0.95, 'go-with-standby'],
  [0, 0.9, 'swap'],
  [1, 0.999, 'go'],
] as const)('dieVerdict of %f where %f is required is %s', (probability, required, verdict) => {
  expect(dieVerdict({ probability, required })).toBe(verdict);
});
