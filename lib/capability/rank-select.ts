import { invariant } from '../invariant';

/**
 * The figure at a rank, smallest at rank 0, without sorting the rest: for quantiles over a few thousand draws, many
 * times a page. Rearranges `values`: pass a copy. Domain: finite figures, 0 ≤ rank < length.
 * Source: formula, Hoare's selection (1961) with the middle of three as pivot, from memory.
 * @example selectRank(Float64Array.of(5, 1, 4), 1) // => 4
 */
export function selectRank(values: Float64Array, rank: number): number {
  invariant(Number.isInteger(rank) && rank >= 0 && rank < values.length, 'selectRank requires a rank within');
  let low = 0;
  let high = values.length - 1;
  while (low < high) {
    const pivot = middleOf(values[low], values[(low + high) >> 1], values[high]);
    let i = low;
    let j = high;
    while (i <= j) {
      while ((values[i] as number) < pivot) i++;
      while ((values[j] as number) > pivot) j--;
      if (i <= j) {
        const held = values[i] as number;
        values[i++] = values[j] as number;
        values[j--] = held;
      }
    }
    if (rank <= j) high = j;
    else if (rank >= i) low = i;
    else break;
  }
  return values[rank] as number;
}

function middleOf(a = 0, b = 0, c = 0): number {
  return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
}
