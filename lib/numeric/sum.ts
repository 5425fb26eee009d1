/**
 * Compensated sum (Neumaier's variant of Kahan's): adds figures of very different size without losing the small ones,
 * so that a shop's total exposure does not depend on which row came first beyond the last digit.
 * Domain: finite numbers; the empty sum is 0. Source: A. Neumaier, ZAMM 54 (1974), algorithm from memory.
 * @example compensatedSum([1, 1e100, 1, -1e100]) // => 2
 */
export function compensatedSum(values: ArrayLike<number>): number {
  let sum = 0;
  let lost = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number;
    const next = sum + value;
    lost += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum;
    sum = next;
  }
  return sum + lost;
}
