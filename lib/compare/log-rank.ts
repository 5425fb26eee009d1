import { invariant } from '../invariant';
import { entriesOf, followed, type ObservedLife } from '../life/kaplan-meier';
import { choleskyFactor, choleskySolve } from '../numeric/cholesky';
import { gammaQ } from '../numeric/gamma';
import type { LogRank } from './comparison';

/** A life, with what it may only be compared within: a 1/4 die is not held against a 9/16 one. */
export interface StratifiedLife extends ObservedLife {
  readonly stratum?: string | undefined;
}

/** Lives of one group, in one unit of exposure within each stratum. */
export interface GroupedLives {
  readonly groupId: string;
  readonly lives: readonly StratifiedLife[];
}

/**
 * Log-rank test of two or more groups: do they last alike? At every age at which something wore out, each group is expected
 * its share of those at risk; χ² = (O − E)ᵀV⁻¹(O − E) with the hypergeometric covariance, ties included, on one degree of
 * freedom less than there are groups with anything at risk at a wear-out. Lives are compared only within their stratum: O,
 * E and V are summed over the strata. A life that was followed only from some age on is at risk from just beyond it.
 * Errors: throws on fewer than two groups (a bug). Without any wear-out χ² is 0 and p is 1.
 * Source: N. Mantel (1966); R. Peto and J. Peto, JRSS A 135 (1972).
 */
export function logRank(groups: readonly GroupedLives[]): LogRank {
  invariant(groups.length >= 2, 'a comparison needs two groups');
  const { observed, expected, covariance } = tally(groups);
  const n = groups.length;
  const used = [...groups.keys()].filter((g) => (covariance[g * n + g] as number) > 1e-12);
  const chi2 = used.length < 2 ? 0 : quadratic(used.slice(1), { observed, expected, covariance, n });
  const degreesOfFreedom = Math.max(0, used.length - 1);
  return {
    chi2,
    degreesOfFreedom,
    p: degreesOfFreedom === 0 ? 1 : gammaQ(degreesOfFreedom / 2, chi2 / 2),
    groups: groups.map(({ groupId, lives }, g) => ({
      groupId,
      edges: lives.length,
      worn: observed[g] as number,
      expected: expected[g] as number,
    })),
  };
}

interface Tally {
  readonly observed: Float64Array;
  readonly expected: Float64Array;
  /** Row-major, one row and column to a group. */
  readonly covariance: Float64Array;
}

function tally(groups: readonly GroupedLives[]): Tally {
  const n = groups.length;
  const sums = {
    observed: new Float64Array(n),
    expected: new Float64Array(n),
    covariance: new Float64Array(n * n),
  };
  const strata = new Set(groups.flatMap(({ lives }) => lives.map(({ stratum }) => stratum)));
  for (const stratum of strata) {
    addStratum(
      sums,
      groups.map(({ lives }) => followed(lives.filter((life) => life.stratum === stratum))),
    );
  }
  return sums;
}

/** The lives of one stratum, group by group, walked through by age. */
function addStratum(sums: Tally, groups: readonly (readonly ObservedLife[])[]): void {
  const n = groups.length;
  const ordered = groups
    .flatMap((lives, group) => lives.map(({ age, worn }) => ({ age, worn, group })))
    .sort((a, b) => a.age - b.age);
  const late = groups.map(entriesOf);
  const come = new Uint32Array(n);
  const atRisk = Float64Array.from(groups, (lives, g) => lives.length - (late[g]?.length ?? 0));
  for (let i = 0; i < ordered.length; ) {
    const left = new Float64Array(n);
    const worn = new Float64Array(n);
    const age = (ordered[i] as (typeof ordered)[number]).age;
    late.forEach((entries, g) => {
      for (; (entries[come[g] as number] ?? age) < age; come[g] = (come[g] as number) + 1)
        atRisk[g] = (atRisk[g] as number) + 1;
    });
    for (; i < ordered.length && ordered[i]?.age === age; i++) {
      const { group, worn: wore } = ordered[i] as (typeof ordered)[number];
      left[group] = (left[group] as number) + 1;
      if (wore) worn[group] = (worn[group] as number) + 1;
    }
    addAge(sums, atRisk, worn);
    for (let g = 0; g < n; g++) atRisk[g] = (atRisk[g] as number) - (left[g] as number);
  }
}

/** One age at which d of N wore out: E = d·n/N, V = d·(N − d)/(N − 1)·(n/N)·(δ − n/N). */
function addAge({ observed, expected, covariance }: Tally, atRisk: Float64Array, worn: Float64Array): void {
  const n = atRisk.length;
  const all = atRisk.reduce((sum, count) => sum + count, 0);
  const d = worn.reduce((sum, count) => sum + count, 0);
  if (d === 0) return;
  const spread = all > 1 ? (d * (all - d)) / (all - 1) : 0;
  for (let g = 0; g < n; g++) {
    const share = (atRisk[g] as number) / all;
    observed[g] = (observed[g] as number) + (worn[g] as number);
    expected[g] = (expected[g] as number) + d * share;
    for (let h = 0; h < n; h++) {
      const other = (atRisk[h] as number) / all;
      covariance[g * n + h] =
        (covariance[g * n + h] as number) + spread * share * ((g === h ? 1 : 0) - other);
    }
  }
}

function quadratic(
  used: readonly number[],
  { observed, expected, covariance, n }: Tally & { n: number },
): number {
  const m = used.length;
  const miss = used.map((g) => (observed[g] as number) - (expected[g] as number));
  const matrix = Float64Array.from({ length: m * m }, (_, at) => {
    const [g, h] = [used[Math.floor(at / m)] as number, used[at % m] as number];
    return covariance[g * n + h] as number;
  });
  const lower = choleskyFactor(matrix, m);
  if (lower === undefined) return 0;
  const solved = choleskySolve(lower, m, miss);
  return miss.reduce((sum, value, i) => sum + value * (solved[i] as number), 0);
}
