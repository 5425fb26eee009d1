import fc from 'fast-check';
import { expect, it } from 'vitest';
import { assign } from '@/lib/numeric/assignment';
import fixture from '../../fixtures/issue-order/assignments.json';

/** The cheapest of all ways, tried one by one: as many pairs as can be, then the least cost. */
function bruteForce(costs: readonly (readonly number[])[]): { pairs: number; cost: number } {
  const columns = costs[0]?.length ?? 0;
  const from = (row: number, used: number): { pairs: number; cost: number } => {
    const mine = costs[row];
    if (mine === undefined) return { pairs: 0, cost: 0 };
    let best = from(row + 1, used);
    for (let column = 0; column < columns; column++) {
      const cost = mine[column] as number;
      if ((used & (1 << column)) !== 0 || cost === Infinity) continue;
      const rest = from(row + 1, used | (1 << column));
      const way = { pairs: rest.pairs + 1, cost: rest.cost + cost };
      if (way.pairs > best.pairs || (way.pairs === best.pairs && way.cost < best.cost)) best = way;
    }
    return best;
  };
  return from(0, 0);
}

// source: other-software. SciPy linear_sum_assignment, tests/fixtures/issue-order/generate.py: whole and real costs, negative
// ones, forbidden pairs, every shape up to 12 × 12.
it.each(fixture.cases.map((known, at) => ({ ...known, at })))('case $at agrees with SciPy', (known) => {
  const costs = known.costs.map((row) => row.map((value) => value ?? Infinity));
  const found = assign(costs);
  expect(found.pairs).toBe(known.pairs);
  expect(Math.abs(found.cost - known.cost)).toBeLessThan(1e-9);
});

// source: hand. Every way of pairing tried one by one, for all small matrices of whole costs with forbidden pairs.
it('is the best of all ways on small matrices', () => {
  const cost = fc.oneof(fc.integer({ min: -9, max: 9 }), fc.constant(Infinity));
  const matrix = fc
    .tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 5 }))
    .chain(([rows, columns]) =>
      fc.array(fc.array(cost, { minLength: columns, maxLength: columns }), {
        minLength: rows,
        maxLength: rows,
      }),
    );
  fc.assert(
    fc.property(matrix, (costs) => {
      const { pairs, cost: total, columnOfRow } = assign(costs);
      expect({ pairs, cost: total }).toEqual(bruteForce(costs));
      const used = columnOfRow.filter((column) => column >= 0);
      expect(new Set(used).size).toBe(used.length);
      expect(used.length).toBe(pairs);
    }),
    { numRuns: 400 },
  );
});

// source: identity. Turning the matrix on its side changes neither pairs nor cost; adding a constant to a row of a square
// matrix that has a full assignment adds it to the cost.
it('does not care which side is which', () => {
  const square = fc.array(fc.array(fc.integer({ min: 0, max: 99 }), { minLength: 4, maxLength: 4 }), {
    minLength: 4,
    maxLength: 4,
  });
  fc.assert(
    fc.property(square, fc.integer({ min: -50, max: 50 }), (costs, more) => {
      const turned = costs.map((_, j) => costs.map((row) => row[j] as number));
      expect(assign(turned).cost).toBe(assign(costs).cost);
      const lifted = costs.map((row, i) => (i === 2 ? row.map((cost) => cost + more) : row));
      expect(assign(lifted).cost).toBe(assign(costs).cost + more);
    }),
  );
});

// source: hand. A row that nobody can serve is left out and keeps nobody else from a column.
it('leaves out what cannot be paired', () => {
  expect(
    assign([
      [Infinity, Infinity],
      [3, 1],
    ]),
  ).toEqual({ columnOfRow: [-1, 1], cost: 1, pairs: 1 });
  expect(assign([])).toEqual({ columnOfRow: [], cost: 0, pairs: 0 });
  expect(assign([[], []])).toEqual({ columnOfRow: [-1, -1], cost: 0, pairs: 0 });
});

// source: hand. A ragged matrix and a cost that is no number are mistakes of the caller.
it('refuses what is no matrix', () => {
  expect(() => assign([[1, 2], [3]])).toThrow(/rows of equal length/);
  expect(() => assign([[Number.NaN]])).toThrow(/above −∞/);
  expect(() => assign([[-Infinity]])).toThrow(/above −∞/);
});
