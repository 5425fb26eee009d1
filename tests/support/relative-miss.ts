/** How far `value` lies from `expected`, as a share of `expected` (absolute when that is 0). */
export function relativeMiss(value: number, expected: number): number {
  if (value === expected) return 0;
  const miss = Math.abs(value - expected);
  const share = expected === 0 ? miss : miss / Math.abs(expected);
  return Number.isNaN(share) ? Number.POSITIVE_INFINITY : share;
}
