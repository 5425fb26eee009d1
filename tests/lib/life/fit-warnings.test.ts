import { expect, it } from 'vitest';
import { warningsOf } from '@/lib/life/fit-warnings';
import { layOut } from '@/lib/life/parameter-layout';
import { defaultLifePriors } from '@/lib/life/priors';
import { cut, edge } from '@/tests/support/edge-histories';

const PRIORS = defaultLifePriors('die', { referenceMaterialId: 'ref', materials: [] });
const GUESS = { odIn: 0.375, lifeBase: 1300, factor: 2 };
const worn = Array.from({ length: 5 }, (_, i) => edge(`T${i}`, { end: 'worn' }));

// source: hand. Each code with the smallest cause that raises it.
it.each([
  {
    name: 'five worn edges and a guess: nothing to say',
    histories: worn,
    guesses: [GUESS],
    rows: 5,
    codes: [],
  },
  { name: 'four worn edges', histories: worn.slice(1), guesses: [GUESS], rows: 4, codes: ['few-worn-edges'] },
  {
    name: 'none worn, no guess',
    histories: [edge('a')],
    guesses: [],
    rows: 1,
    codes: ['no-worn-edges', 'default-life-used'],
  },
  {
    name: 'an edge left out',
    histories: worn,
    guesses: [GUESS],
    rows: 4,
    codes: ['edges-without-exposure-ignored'],
  },
  {
    name: 'a material in no list',
    histories: [...worn, edge('m', { before: [cut(1, { materialId: 'odd' })] })],
    guesses: [GUESS],
    rows: 6,
    codes: ['material-without-prior'],
  },
])('$name', ({ histories, guesses, rows, codes }) => {
  const layout = layOut(histories, guesses, PRIORS);
  // Only the number of rows is read.
  expect(warningsOf(histories, new Array(rows), layout, 'converged')).toEqual(codes);
  expect(warningsOf(histories, new Array(rows), layout, 'cap')).toEqual([...codes, 'not-converged']);
});
