import { wilsonInterval } from './wilson';

/** Whether something came true, and the edge that it happened to: what happens to one edge is not several witnesses. */
export interface ClusteredHit {
  readonly hit: boolean;
  /** Absent: a case by itself. */
  readonly edge?: string | undefined;
}

/**
 * 95 % interval of a share over cases that come in clusters: several bands of one edge all hang on one life. Wilson's interval with
 * the effective number of cases n/D in place of n, D the design effect: with m edges, r_j the sum of (hit − share) over the j-th,
 *
 *   V = m/(m − 1)·Σ r_j²/n²,  D = V ÷ (share·(1 − share)/n),  never below 1
 *
 * Where V says nothing (one edge, or all cases alike) as many cases count as there are edges. Without clusters it is Wilson's.
 * Domain: at least one case. Source: formula (Kish 1965; Korn and Graubard 1998, from memory).
 */
export function clusteredInterval(cases: readonly ClusteredHit[]): { low: number; high: number } {
  const n = cases.length;
  const hits = cases.filter(({ hit }) => hit).length;
  const share = hits / n;
  const sums = new Map<string, number>();
  cases.forEach(({ hit, edge }, i) => {
    const key = edge === undefined ? `case ${i}` : `edge ${edge}`;
    sums.set(key, (sums.get(key) ?? 0) + (hit ? 1 : 0) - share);
  });
  const m = sums.size;
  if (m === n) return wilsonInterval(hits, n);
  const squares = [...sums.values()].reduce((sum, r) => sum + r * r, 0);
  const told = m > 1 && squares > 0;
  const effect = told ? ((m / (m - 1)) * squares) / (n * share * (1 - share)) : n / m;
  const effective = n / Math.max(1, effect);
  return wilsonInterval(share * effective, effective);
}
