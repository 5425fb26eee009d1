import fc from 'fast-check';
import { expect, it } from 'vitest';
import { selectRank } from '@/lib/capability/rank-select';

// source: identity. The language's own sort.
it('selectRank finds what sorting finds, at every rank, ties and all', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 20 }), { minLength: 1, maxLength: 60 }), (list) => {
      const ascending = [...list].sort((a, b) => a - b);
      ascending.forEach((value, rank) => {
        expect(selectRank(Float64Array.from(list), rank)).toBe(value);
      });
    }),
    { numRuns: 300, seed: 31 },
  );
});

// source: hand.
it('selectRank throws on a rank outside', () => {
  expect(() => selectRank(Float64Array.of(1), 1)).toThrow('rank within');
  expect(() => selectRank(Float64Array.of(1), 0.5)).toThrow('rank within');
});
