import { expect, it } from 'vitest';
import { cellsOf, orderHistories } from '@/lib/life/observation';
import { cut, edge } from '@/tests/support/edge-histories';

// source: hand.
it('adds rows up by material and condition, and forgets empty ones', () => {
  const parts = [
    cut(2),
    cut(3, { materialId: 'b' }),
    cut(5),
    cut(7, { dry: true }),
    cut(0, { rework: true }),
  ];
  expect(cellsOf(parts)).toEqual([cut(3, { materialId: 'b' }), cut(7), cut(7, { dry: true })]);
});

// source: identity. Order of the rows does not reach the last bit.
it('gives the same bits for any order of the rows', () => {
  const parts = [0.1, 0.7, 1e9, 0.3, 1e-7].map((base) => cut(base));
  expect(cellsOf([...parts].reverse())).toEqual(cellsOf(parts));
});

it('refuses an impossible exposure and an edge given twice', () => {
  expect(() => cellsOf([cut(-1)])).toThrow('invariant');
  expect(() => cellsOf([cut(Number.NaN)])).toThrow('invariant');
  expect(() => orderHistories([edge('a'), edge('a')], 'die')).toThrow('given twice');
});

it('orders histories by tool and edge, and keeps one kind', () => {
  const histories = [
    edge('b'),
    edge('a', { edgeNo: 10 }),
    edge('a', { edgeNo: 2 }),
    edge('c', { kind: 'blade' }),
  ];
  expect(orderHistories(histories, 'die').map(({ toolId, edgeNo }) => `${toolId}${edgeNo}`)).toEqual([
    'a2',
    'a10',
    'b1',
  ]);
});
