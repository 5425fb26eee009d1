import { expect, it } from 'vitest';
import { nestedTakers } from '@/lib/capability/nested-reach';

function nested(takers: number, ...reaches: number[][]): boolean[] {
  const byTaker = Array.from({ length: takers }, (_, taker) =>
    reaches.flatMap((reach, p) => (reach.includes(taker) ? [p] : [])),
  );
  return nestedTakers(
    reaches.map((reach) => ({ reach })),
    byTaker,
  );
}

// source: hand. Drawn on paper as sets.
it('nestedTakers: nested or disjoint is true, crossed is false for all that hang together with it', () => {
  expect(nested(3, [0, 1, 2], [1, 2], [2])).toEqual([true, true, true]);
  expect(nested(4, [0, 1], [2, 3])).toEqual([true, true, true, true]);
  expect(nested(4, [0, 1], [1, 2], [3])).toEqual([false, false, false, true]);
  expect(nested(3, [0, 1], [0, 1], [])).toEqual([true, true, true]);
  expect(nested(4, [0, 1], [1, 2], [2, 3])).toEqual([false, false, false, false]);
});
