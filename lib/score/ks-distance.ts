/**
 * Kolmogorov–Smirnov distance of shares from an even spread over 0 … 1: for the shares of the draws below what then came
 * (probability integral transform), which an honest forecast spreads evenly. D = max |i/n − u|, both sides of each step.
 * Domain: shares within 0 … 1; without any the distance is 0. Source: formula.
 * @example ksDistance([0.5]) // => 0.5
 */
export function ksDistance(shares: readonly number[]): number {
  const sorted = [...shares].sort((a, b) => a - b);
  const n = sorted.length;
  return sorted.reduce((most, u, i) => Math.max(most, (i + 1) / n - u, u - i / n), 0);
}
