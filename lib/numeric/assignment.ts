import { invariant } from '../invariant';

/** Who gets what: for every row its column, or −1 for none. */
export interface Assignment {
  readonly columnOfRow: readonly number[];
  /** Sum of the costs of the pairs made. */
  readonly cost: number;
  /** How many pairs were made. */
  readonly pairs: number;
}

/**
 * Cheapest assignment of rows to columns, each used at most once (the linear sum assignment problem), rectangular either
 * way. For giving tools to lines that want them at the same time. `Infinity` forbids a pair. As many pairs are made as
 * can be; among those the sum of costs is least. Of equally cheap ones always the same is returned.
 *
 *   min Σ cost[i][σ(i)] over partial one-to-one σ of greatest size
 *
 * Costs may be negative or real; with whole numbers below 2⁵³ the answer is exact.
 * Errors: throws on a ragged matrix, NaN or −∞. Cost O(r²·c) with r the lesser side.
 * Source: shortest augmenting paths with potentials: Kuhn 1955, Jonker and Volgenant 1987 (from memory).
 * @example assign([[4, 1, 3], [2, 0, 5], [3, 2, 2]]).cost // => 5
 */
export function assign(costs: readonly (readonly number[])[]): Assignment {
  const rows = costs.length;
  const columns = costs[0]?.length ?? 0;
  for (const row of costs) {
    invariant(row.length === columns, 'assign requires rows of equal length');
    invariant(
      !row.some((cost) => Number.isNaN(cost) || cost === -Infinity),
      'assign requires costs above −∞',
    );
  }
  const columnOfRow = rows <= columns ? matched(costs) : inverted(matched(transposed(costs, columns)), rows);
  let cost = 0;
  let pairs = 0;
  columnOfRow.forEach((column, row) => {
    if (column < 0) return;
    cost += costs[row]?.[column] as number;
    pairs += 1;
  });
  return { columnOfRow, cost, pairs };
}

/** Columns are 1 … m; 0 stands for the row being placed. `rowOf[j]` is 0 where column j is free. */
interface Search {
  readonly rowOf: Int32Array;
  readonly rowPrice: Float64Array;
  readonly columnPrice: Float64Array;
  /** The column before this one on the cheapest path so far. */
  readonly before: Int32Array;
  readonly distance: Float64Array;
  readonly done: Uint8Array;
}

/** The same for at most as many rows as columns, row by row. A row that cannot be placed beside those before it displaces none. */
function matched(costs: readonly (readonly number[])[]): number[] {
  const count = costs.length;
  const width = costs[0]?.length ?? 0;
  // A row may also stay out, in a column of its own dearer than any way round.
  const out = outPrice(costs);
  const wide = costs.map((row, i) => [
    ...row,
    ...Array.from({ length: count }, (_, k) => (k === i ? out : Infinity)),
  ]);
  const total = width + count;
  const search: Search = {
    rowOf: new Int32Array(total + 1),
    rowPrice: new Float64Array(count + 1),
    columnPrice: new Float64Array(total + 1),
    before: new Int32Array(total + 1),
    distance: new Float64Array(total + 1),
    done: new Uint8Array(total + 1),
  };
  for (let row = 1; row <= count; row++) place(search, wide, row);
  const columnOfRow = new Array<number>(count).fill(-1);
  for (let column = 1; column <= width; column++) {
    const row = search.rowOf[column] as number;
    if (row > 0) columnOfRow[row - 1] = column - 1;
  }
  return columnOfRow;
}

/** More than any difference between two assignments of the finite pairs, so that staying out is the last resort. */
function outPrice(costs: readonly (readonly number[])[]): number {
  let spread = 1;
  for (const row of costs) {
    const finite = row.filter(Number.isFinite);
    if (finite.length > 0) spread += 2 * Math.max(...finite.map(Math.abs));
  }
  return spread;
}

/** Places one more row along the cheapest augmenting path (Dijkstra on reduced costs), and moves the prices along. */
function place(search: Search, costs: readonly (readonly number[])[], row: number): void {
  const { rowOf, rowPrice, columnPrice, before, distance, done } = search;
  distance.fill(Infinity);
  done.fill(0);
  rowOf[0] = row;
  let at = 0;
  do {
    done[at] = 1;
    const i = rowOf[at] as number;
    const costOf = costs[i - 1] ?? [];
    let next = -1;
    for (let j = 1; j < distance.length; j++) {
      if (done[j]) continue;
      const reduced = (costOf[j - 1] as number) - (rowPrice[i] as number) - (columnPrice[j] as number);
      if (reduced < (distance[j] as number)) {
        distance[j] = reduced;
        before[j] = at;
      }
      if (next < 0 || (distance[j] as number) < (distance[next] as number)) next = j;
    }
    const step = distance[next] as number;
    for (let j = 0; j < distance.length; j++) {
      if (done[j]) {
        const holder = rowOf[j] as number;
        rowPrice[holder] = (rowPrice[holder] as number) + step;
        columnPrice[j] = (columnPrice[j] as number) - step;
      } else distance[j] = (distance[j] as number) - step;
    }
    at = next;
  } while (rowOf[at] !== 0);
  while (at !== 0) {
    const previous = before[at] as number;
    rowOf[at] = rowOf[previous] as number;
    at = previous;
  }
}

function transposed(costs: readonly (readonly number[])[], columns: number): number[][] {
  return Array.from({ length: columns }, (_, j) => costs.map((row) => row[j] as number));
}

function inverted(rowOfColumn: readonly number[], rows: number): number[] {
  const columnOfRow = new Array<number>(rows).fill(-1);
  rowOfColumn.forEach((row, column) => {
    if (row >= 0) columnOfRow[row] = column;
  });
  return columnOfRow;
}
