import fc from 'fast-check';
import { expect, it } from 'vitest';
import { addUse, cutToUse, holdsExactly } from '@/lib/ledger/edge-use';
import { newEdge } from '@/lib/ledger/tool-record';
import { cut } from '../../support/entry';

// source: hand. 2 + 3 ends, 21 + 31.5 turns, in one material and condition.
it('adds a row to the sum of its connection, material and condition', () => {
  const first = addUse(newEdge(1), cutToUse(cut()));
  const second = addUse(first, cutToUse(cut({ ends: 3, goodEnds: 1, exposureMicro: 31_500_000 })));
  expect(second.use).toEqual([
    {
      connectionId: '9-16-high',
      materialId: '316',
      dry: false,
      rework: false,
      ends: 5,
      goodEnds: 3,
      exposureMicro: 52_500_000,
    },
  ]);
});

it.each([[{ materialId: '2507' }], [{ connectionId: '9-16-medium' }], [{ dry: true }], [{ rework: true }]])(
  'keeps apart what was cut under other conditions: %o',
  (other) => {
    const edge = addUse(addUse(newEdge(1), cutToUse(cut())), cutToUse(cut(other)));
    expect(edge.use).toHaveLength(2);
  },
);

it('remembers the last row, and leaves the edge it is given alone', () => {
  const edge = Object.freeze(newEdge(1));
  const use = cutToUse(cut({ ends: 7 }));
  expect(addUse(edge, use).lastUse).toEqual(use);
  expect(edge.use).toEqual([]);
});

// source: identity. Sums of integers do not depend on their order.
it('sums come out the same in any order', () => {
  const micro = fc.array(fc.integer({ min: 0, max: 2 ** 40 }), { minLength: 1, maxLength: 20 });
  fc.assert(
    fc.property(micro, (amounts) => {
      const sum = (list: number[]) =>
        list.reduce((edge, exposureMicro) => addUse(edge, cutToUse(cut({ exposureMicro }))), newEdge(1)).use;
      expect(sum(amounts)).toEqual(sum([...amounts].reverse()));
    }),
  );
});

it('knows when a sum can no longer be held exactly', () => {
  const use = cutToUse(cut({ exposureMicro: Number.MAX_SAFE_INTEGER }));
  const full = addUse(newEdge(1), use);
  expect(holdsExactly(full)).toBe(true);
  expect(holdsExactly(addUse(full, cutToUse(cut({ exposureMicro: 1 }))))).toBe(false);
});
