import type { BacktestCase } from '../score/backtest';
import type { ChangeCase } from '../score/change-case';
import type { LogEvent } from '../score/log-event';
import type { EdgeKind } from '../shop/vocabulary';
import type { EdgeCycle } from './cost-per-wear';
import { type WholeEdge, wholeEdges } from './whole-edges';

/** What a rule for changing edges led to on the shop's own edges: changes between jobs, changes in mid-job, ends cut. */
export interface RuleCount {
  readonly planned: number;
  readonly midJob: number;
  readonly ends: number;
}

/** Two rules on the same edges of one part: change when going on would cost more; change at a fixed count. */
export interface RuleCounts {
  readonly partId: string;
  readonly kind: EdgeKind;
  readonly edges: number;
  readonly predicted: RuleCount;
  readonly fixed: RuleCount;
  /** Edge by edge in one order, under each rule. */
  readonly cycles: { readonly predicted: readonly EdgeCycle[]; readonly fixed: readonly EdgeCycle[] };
  /** Wear of all that these edges cut, and its ends. */
  readonly wear: number;
  readonly ends: number;
  /** The mean question that the log asked: so many ends, what they take out of an edge, what a failure costs more. */
  readonly usual: UsualChange | null;
}

/** Money in minor units. */
export interface UsualChange {
  readonly workEnds: number;
  readonly workMinor: number;
  readonly extraMinor: number;
}

type Says = (change: ChangeCase | undefined) => boolean;
const RULES: Record<'predicted' | 'fixed', Says> = {
  predicted: (change) => change?.carryOn?.changeFirst === true,
  fixed: (change) => change?.countPassed === true,
};

/**
 * Goes through every edge of the log as each rule would have, asked at the start of every row but the first, with what was known then
 * (`BacktestCase.change`): where the rule says "change", a planned change after the wear by then; where it never does and the
 * edge wore out or was chipped or dropped, a change in mid-job. An edge that still cuts, was taken out while good or got
 * lost has lasted at least so long. Only parts with a fixed count and a price are compared. Assumes that the rows that
 * follow a change would have gone to a new edge just as well. `wearFactor`: how much faster a material wears an edge than
 * the reference. Source: formula (replay).
 */
export function ruleCounts(
  events: readonly LogEvent[],
  cases: readonly BacktestCase[],
  wearFactor: (materialId: string) => number,
): RuleCounts[] {
  const said = new Map(cases.map(({ prediction, change }) => [prediction.id, change]));
  const byPart = new Map<string, { edge: WholeEdge; changes: (ChangeCase | undefined)[] }[]>();
  for (const edge of wholeEdges(events)) {
    const changes = edge.rows.map((_, at) => said.get(`${at}:${edge.edgeNo}:${edge.toolId}`));
    const isAsked = changes.some((one) => one?.countPassed !== undefined && one.carryOn !== undefined);
    if (isAsked) byPart.set(edge.partId, [...(byPart.get(edge.partId) ?? []), { edge, changes }]);
  }
  return [...byPart].sort(([a], [b]) => (a < b ? -1 : 1)).map(([partId, edges]) => countsOf(partId, edges));

  function countsOf(partId: string, edges: { edge: WholeEdge; changes: (ChangeCase | undefined)[] }[]) {
    const under = (rule: keyof typeof RULES) =>
      edges.map(({ edge, changes }) => cycleUnder(RULES[rule], edge, changes, wearFactor));
    const [predicted, fixed] = [under('predicted'), under('fixed')];
    const whole = edges.map(({ edge }) => cycleUnder(() => false, edge, [], wearFactor));
    return {
      ...{ partId, kind: edges[0]?.edge.kind ?? 'die', edges: edges.length },
      ...{ predicted: countOf(predicted), fixed: countOf(fixed), cycles: { predicted, fixed } },
      wear: whole.reduce((sum, { wear }) => sum + wear, 0),
      ends: whole.reduce((sum, { ends }) => sum + ends, 0),
      usual: usualOf(edges.flatMap(({ changes }) => changes.slice(1))),
    };
  }
}

function cycleUnder(
  changeNow: Says,
  { rows, ended }: WholeEdge,
  changes: readonly (ChangeCase | undefined)[],
  wearFactor: (materialId: string) => number,
): EdgeCycle {
  let [ends, wear] = [0, 0];
  for (const [at, row] of rows.entries()) {
    if (at > 0 && changeNow(changes[at])) return { ends, wear, end: 'planned' };
    ends += row.ends;
    wear += row.ends * row.exposurePerEnd * wearFactor(row.materialId);
  }
  const failed = ended?.how === 'worn' || ended?.how === 'incident';
  return { ends, wear, end: failed ? 'mid-job' : 'open' };
}

function countOf(cycles: readonly EdgeCycle[]): RuleCount {
  const having = (end: EdgeCycle['end']) => cycles.filter((cycle) => cycle.end === end).length;
  return {
    ...{ planned: having('planned'), midJob: having('mid-job') },
    ends: cycles.reduce((sum, { ends }) => sum + ends, 0),
  };
}

function usualOf(changes: readonly (ChangeCase | undefined)[]): UsualChange | null {
  const asked = changes.flatMap((one) =>
    one?.carryOn === undefined ? [] : [{ ...one, carryOn: one.carryOn }],
  );
  const mean = (of: (one: (typeof asked)[number]) => number) =>
    asked.reduce((sum, one) => sum + of(one), 0) / asked.length;
  if (asked.length === 0) return null;
  return {
    workEnds: Math.max(1, Math.round(mean(({ workEnds }) => workEnds))),
    workMinor: mean(({ carryOn }) => carryOn.workCost),
    extraMinor: mean(({ carryOn }) => carryOn.extraCost),
  };
}
