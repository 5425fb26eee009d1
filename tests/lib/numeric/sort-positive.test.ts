import { expect, it } from 'vitest';
import { streamOfKey } from '@/lib/numeric/random-stream';
import { sortPositive } from '@/lib/numeric/sort-positive';

const random = streamOfKey('sort');
const spread = (make: (i: number) => number, count = 2048) =>
  Float64Array.from({ length: count }, (_, i) => make(i));

const LISTS: readonly (readonly [string, Float64Array])[] = [
  ['lives', spread(() => 1200 * Math.sqrt(-Math.log(random())))],
  ['over many sizes', spread(() => Math.exp(60 * random() - 30))],
  ['nearly alike', spread(() => 1 + 1e-9 * random())],
  ['all alike', spread(() => 7)],
  [
    'with nothing left and without end',
    spread((i) => [0, Number.POSITIVE_INFINITY, 5e-324, random()][i % 4] ?? 0),
  ],
  ['already in order', spread((i) => i)],
  ['in reverse', spread((i) => 5000 - i)],
  ['none', spread(() => 0, 0)],
  ['one', spread(() => 3, 1)],
];

// source: identity. The same figures in the same order as the language's own sort.
it.each(LISTS)('sorts figures: %s', (_name, values) => {
  const expected = Float64Array.from(values).sort();
  expect(sortPositive(Float64Array.from(values))).toEqual(expected);
});

it('sorts a part of a longer list and leaves the rest', () => {
  const whole = Float64Array.of(9, 5, 3, 4, 1);
  sortPositive(whole.subarray(1, 4));
  expect([...whole]).toEqual([9, 3, 4, 5, 1]);
});
