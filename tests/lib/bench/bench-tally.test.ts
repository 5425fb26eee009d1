import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type BenchPress, benchTallies } from '@/lib/bench/bench-tally';

const press: fc.Arbitrary<BenchPress> = fc.oneof(
  fc.record({
    kind: fc.constant('ends' as const),
    toolId: fc.constantFrom('D-1', 'D-2'),
    operation: fc.constant('thread' as const),
    ends: fc.constantFrom(1, 5),
  }),
  fc.record({
    kind: fc.constant('reject' as const),
    toolId: fc.constantFrom('D-1', 'D-2'),
    operation: fc.constant('thread' as const),
    cause: fc.constantFrom('go-tight' as const, 'torn-thread' as const),
  }),
);

// source: hand. Counted on paper.
it('adds up what was pressed, tool by tool', () => {
  const tallies = benchTallies([
    { kind: 'ends', toolId: 'B-1', operation: 'cone', ends: 5 },
    { kind: 'ends', toolId: 'D-1', operation: 'thread', ends: 1 },
    { kind: 'reject', toolId: 'D-1', operation: 'thread', cause: 'go-tight' },
    { kind: 'reject', toolId: 'D-1', operation: 'thread', cause: 'go-tight' },
    { kind: 'ends', toolId: 'D-1', operation: 'thread', ends: 5 },
  ]);
  expect(tallies).toEqual([
    { toolId: 'B-1', operation: 'cone', ends: 5, goodEnds: 5, rejects: [] },
    { toolId: 'D-1', operation: 'thread', ends: 8, goodEnds: 6, rejects: [{ cause: 'go-tight', count: 2 }] },
  ]);
});

// source: identity. Good and rejected ends make up all ends; the order of presses changes no sum.
it('good and rejected make up all, in any order', () => {
  fc.assert(
    fc.property(fc.array(press, { maxLength: 40 }), (presses) => {
      const sums = (list: readonly BenchPress[]) =>
        benchTallies(list)
          .map(({ toolId, ends, goodEnds }) => [toolId, ends, goodEnds] as const)
          .sort();
      for (const { ends, goodEnds, rejects } of benchTallies(presses))
        expect(goodEnds + rejects.reduce((sum, { count }) => sum + count, 0)).toBe(ends);
      expect(sums([...presses].reverse())).toEqual(sums(presses));
    }),
  );
});
