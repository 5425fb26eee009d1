const BITS = 11;
const SIZE = 2 ** BITS;
const counts = new Uint32Array(SIZE);

/**
 * Sorts figures that are zero or more, in place, smallest first: what a plain sort gives, several times faster for a few
 * thousand draws. Two passes over the leading 22 bits, in which such figures stand in their own order, then insertion for
 * what is left. Domain: finite or infinite, zero or more, not −0, no NaN. Source: formula (radix sort).
 */
export function sortPositive(values: Float64Array): Float64Array {
  const n = values.length;
  const words = new Uint32Array(values.buffer, values.byteOffset, 2 * n);
  const spare = new Float64Array(n);
  const spareWords = new Uint32Array(spare.buffer);
  pass(words, values, spare, 32 - 2 * BITS);
  pass(spareWords, spare, values, 32 - BITS);
  insertion(values);
  return values;
}

/** The upper half of each figure's bits stands second (little-endian machines only, as all that run this are). */
function pass(words: Uint32Array, from: Float64Array, to: Float64Array, shift: number): void {
  const n = from.length;
  counts.fill(0);
  for (let i = 0; i < n; i++) {
    const at = ((words[2 * i + 1] as number) >>> shift) & (SIZE - 1);
    counts[at] = (counts[at] as number) + 1;
  }
  let sum = 0;
  for (let b = 0; b < SIZE; b++) {
    const count = counts[b] as number;
    counts[b] = sum;
    sum += count;
  }
  for (let i = 0; i < n; i++) {
    const at = ((words[2 * i + 1] as number) >>> shift) & (SIZE - 1);
    const place = counts[at] as number;
    to[place] = from[i] as number;
    counts[at] = place + 1;
  }
}

/** After the passes only near neighbours are out of order; many equal leading bits would make this slow, so then not. */
function insertion(values: Float64Array): void {
  let moves = 0;
  for (let i = 1; i < values.length; i++) {
    const value = values[i] as number;
    let j = i - 1;
    for (; j >= 0 && (values[j] as number) > value; j--) values[j + 1] = values[j] as number;
    values[j + 1] = value;
    moves += i - 1 - j;
    if (moves > 16 * values.length) {
      values.sort();
      return;
    }
  }
}
