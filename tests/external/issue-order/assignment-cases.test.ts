import { expect, it } from 'vitest';
import { firstFitDecreasing, packEdges } from '@/lib/issue-order/pack-edges';
import { assign } from '@/lib/numeric/assignment';

// source: published. Test cases of SciPy's linear sum assignment (sparse matching tests): 850 and 18.
it.each([
  [
    [
      [400, 150, 400],
      [400, 450, 600],
      [300, 225, 300],
    ],
    850,
  ],
  [
    [
      [10, 10, 8],
      [9, 8, 1],
      [9, 7, 4],
    ],
    18,
  ],
])('assignment %j costs %d', (costs, cost) => {
  expect(assign(costs).cost).toBe(cost);
});

// source: published, from memory. The example of SciPy's documentation: 5, by columns 1, 0, 2.
it('assigns the documented example', () => {
  expect(
    assign([
      [4, 1, 3],
      [2, 0, 5],
      [3, 2, 2],
    ]),
  ).toEqual({ columnOfRow: [1, 0, 2], cost: 5, pairs: 3 });
});

// source: published, from memory. The bin packing example of a public solver's manual: eleven weights, capacity 100, four bins.
it('packs the documented example into four', () => {
  const packing = packEdges([48, 30, 19, 36, 36, 27, 42, 42, 36, 24, 30], 100);
  expect(packing).toMatchObject({ leastBins: 4, exact: true });
  expect(packing.bins).toHaveLength(4);
});

// source: hand. 5 + 3 + 2 and 4 + 4 + 2 fill two bins of 10; first fit decreasing puts 5 and 4 together and needs three.
it('beats first fit decreasing where that errs', () => {
  expect(packEdges([5, 4, 4, 3, 2, 2], 10).bins).toHaveLength(2);
  expect(firstFitDecreasing([5, 4, 4, 3, 2, 2], 10)).toHaveLength(3);
});
