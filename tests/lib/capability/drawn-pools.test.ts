import { expect, it } from 'vitest';
import type { Candidate } from '@/lib/capability/candidates';
import { drawnPools } from '@/lib/capability/drawn-pools';

function piece(at: number, arrivalDayDraws: number[]): Candidate {
  return {
    id: `PO-1/part-die/${at}`,
    toolId: null,
    partId: 'part-die',
    role: 'die',
    fits: ['S'],
    newIndex: at,
    arrivalDayDraws,
    levelMl: 0,
    isUnused: true,
    standing: () => null,
  };
}

// source: hand. Two lines, of use until day 5 and day 9. The order comes on days 3, 7, 9, 12 and never.
it('puts each draw where its own day falls: both lines, the later one, none', () => {
  const days = [3, 7, 9, 12, Number.POSITIVE_INFINITY];
  const pieces = [0, 1].map((at) => ({ candidate: piece(at, days), takers: [0, 1] }));
  const life = { 0: [1, 1, 1, 1, 1], 1: [10, 20, 30, 40, 50] };
  const pools = drawnPools(pieces, [5, 9], 5, ({ newIndex }) =>
    Float64Array.from(newIndex === 0 ? life[0] : life[1]),
  );
  expect(
    pools.map(({ reach, supply, draws, lateInDays }) => [
      reach,
      [...supply],
      [...(draws ?? [])],
      [...lateInDays.keys()],
    ]),
  ).toEqual([
    [[0, 1], [11, 0, 0, 0, 0], [0], []],
    [[1], [0, 21, 31, 0, 0], [1, 2], [0]],
    [[], [0, 0, 0, 41, 51], [3, 4], [0, 1]],
  ]);
});

// source: identity. A part that the ensemble does not know has no life.
it('leaves out what nobody knows the life of', () => {
  expect(drawnPools([{ candidate: piece(0, [1]), takers: [0] }], [5], 1, () => undefined)).toEqual([]);
});
