/**
 * Cholesky factor of a symmetric positive definite matrix: lower triangular L with L·Lᵀ = A, or undefined when the
 * matrix is not positive definite. Matrices are row-major Float64Array of n·n figures; only the lower half of A is read.
 * For the spread of the fitted figures and for drawing futures from it. Source: formula (standard).
 */
export function choleskyFactor(matrix: Float64Array, n: number): Float64Array | undefined {
  const lower = new Float64Array(n * n);
  for (let row = 0; row < n; row++) {
    for (let column = 0; column <= row; column++) {
      let sum = matrix[row * n + column] as number;
      for (let k = 0; k < column; k++)
        sum -= (lower[row * n + k] as number) * (lower[column * n + k] as number);
      if (row !== column) lower[row * n + column] = sum / (lower[column * n + column] as number);
      else if (sum > 0 && Number.isFinite(sum)) lower[row * n + row] = Math.sqrt(sum);
      else return undefined;
    }
  }
  return lower;
}

/** Solves A·x = b, given the Cholesky factor L of A. Source: formula (forward, then backward substitution). */
export function choleskySolve(lower: Float64Array, n: number, right: ArrayLike<number>): Float64Array {
  const x = Float64Array.from(right);
  for (let row = 0; row < n; row++) {
    let sum = x[row] as number;
    for (let k = 0; k < row; k++) sum -= (lower[row * n + k] as number) * (x[k] as number);
    x[row] = sum / (lower[row * n + row] as number);
  }
  for (let row = n - 1; row >= 0; row--) {
    let sum = x[row] as number;
    for (let k = row + 1; k < n; k++) sum -= (lower[k * n + row] as number) * (x[k] as number);
    x[row] = sum / (lower[row * n + row] as number);
  }
  return x;
}

/** Inverse of A from its Cholesky factor, exactly symmetric. Source: formula. */
export function choleskyInverse(lower: Float64Array, n: number): Float64Array {
  const inverse = new Float64Array(n * n);
  for (let column = 0; column < n; column++) {
    const unit = new Float64Array(n);
    unit[column] = 1;
    const solved = choleskySolve(lower, n, unit);
    for (let row = column; row < n; row++) {
      inverse[row * n + column] = solved[row] as number;
      inverse[column * n + row] = solved[row] as number;
    }
  }
  return inverse;
}

/** Logarithm of the determinant of A from its Cholesky factor: 2·Σ ln Lᵢᵢ. Source: formula. */
export function choleskyLogDet(lower: Float64Array, n: number): number {
  let sum = 0;
  for (let row = 0; row < n; row++) sum += Math.log(lower[row * n + row] as number);
  return 2 * sum;
}
