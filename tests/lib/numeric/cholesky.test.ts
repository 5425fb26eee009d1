import { expect, it } from 'vitest';
import { choleskyFactor, choleskyInverse, choleskyLogDet, choleskySolve } from '@/lib/numeric/cholesky';
import matrices from '../../fixtures/numeric/matrices.json';

// source: other-software. mpmath, 50 digits, tests/fixtures/numeric/generate.py. The worst condition number is about 1e3.
it.each(matrices.cases)('factor, solution, inverse and determinant of a $n by $n matrix', (row) => {
  const { n } = row;
  const lower = choleskyFactor(Float64Array.from(row.matrix), n);
  if (lower === undefined) throw new Error('expected a positive definite matrix');
  const largest = Math.max(...row.inverse.map(Math.abs));
  choleskySolve(lower, n, row.right).forEach((value, i) => {
    expect(Math.abs(value - (row.solution[i] ?? Number.NaN))).toBeLessThan(1e-12 * largest * n);
  });
  choleskyInverse(lower, n).forEach((value, i) => {
    expect(Math.abs(value - (row.inverse[i] ?? Number.NaN))).toBeLessThan(1e-12 * largest);
  });
  expect(Math.abs(choleskyLogDet(lower, n) - row.logDet)).toBeLessThan(1e-12);
});

// source: hand. Eigenvalues 3 and −1; and a matrix of rank one.
it('refuses a matrix that is not positive definite', () => {
  expect(choleskyFactor(Float64Array.of(1, 2, 2, 1), 2)).toBeUndefined();
  expect(choleskyFactor(Float64Array.of(1, 1, 1, 1), 2)).toBeUndefined();
  expect(choleskyFactor(Float64Array.of(Number.NaN), 1)).toBeUndefined();
});
