import type { BacktestCase } from '../score/backtest';
import type { EdgeEnded, LogEvent, RowCut } from '../score/log-event';
import type { EdgeKind } from '../shop/vocabulary';

/** What a rule for changing edges led to on the shop's own edges: changes between jobs, changes in mid-job, ends cut. */
export interface RuleCount {
  readonly planned: number;
  readonly midJob: number;
  readonly ends: number;
}

/** Two rules on the same edges of one part: change when the estimate says it will not finish; change at a fixed count. */
export interface RuleCounts {
  readonly partId: string;
  readonly kind: EdgeKind;
  readonly edges: number;
  readonly predicted: RuleCount;
  readonly fixed: RuleCount;
}

/** Below even chances of finishing the work asked for, the edge is changed first. Common practice, no source. */
export const CHANGE_BELOW = 0.5;

type Says = (said: BacktestCase['prediction'] | undefined) => boolean;
const RULES: Record<'predicted' | 'fixed', Says> = {
  predicted: (said) => said !== undefined && said.probability < CHANGE_BELOW,
  fixed: (said) => said?.fixedCount === 0,
};

/**
 * Goes through every edge of the log as each rule would have: where the rule says "change" before a row, a planned change
 * with the ends cut by then; where it never does and the edge wore out, a change in mid-job. An edge that ended otherwise,
 * or still cuts, counts with its ends only. Only parts that have a fixed count are compared.
 * Assumes that the rows that follow a change would have gone to a new edge just as well. Source: formula (replay).
 */
export function ruleCounts(events: readonly LogEvent[], cases: readonly BacktestCase[]): RuleCounts[] {
  const said = new Map(cases.map(({ prediction }) => [prediction.id, prediction]));
  const byPart = new Map<string, RuleCounts>();
  for (const edge of edgesOf(events)) {
    const predictions = edge.rows.map((_, at) => said.get(`${at}:${edge.edgeNo}:${edge.toolId}`));
    if (predictions.every((prediction) => prediction?.fixedCount === undefined)) continue;
    const before = byPart.get(edge.partId) ?? none(edge.partId, edge.kind);
    byPart.set(edge.partId, {
      ...before,
      edges: before.edges + 1,
      predicted: added(before.predicted, outcome(edge, predictions, RULES.predicted)),
      fixed: added(before.fixed, outcome(edge, predictions, RULES.fixed)),
    });
  }
  return [...byPart.values()].sort((a, b) => (a.partId < b.partId ? -1 : 1));
}

interface WholeEdge {
  readonly toolId: string;
  readonly edgeNo: number;
  readonly partId: string;
  readonly kind: EdgeKind;
  readonly rows: RowCut[];
  ended: EdgeEnded | null;
}

function edgesOf(events: readonly LogEvent[]): WholeEdge[] {
  const edges = new Map<string, WholeEdge>();
  for (const event of events) {
    const key = `${event.edgeNo}:${event.toolId}`;
    const edge = edges.get(key);
    if (event.type === 'began') {
      const { toolId, edgeNo, partId, kind } = event;
      if (event.startKnown) edges.set(key, { toolId, edgeNo, partId, kind, rows: [], ended: null });
    } else if (event.type === 'cut') edge?.rows.push(event);
    else if (event.type === 'ended' && edge !== undefined) edge.ended = event;
  }
  return [...edges.values()];
}

function outcome(
  { rows, ended }: WholeEdge,
  predictions: readonly (BacktestCase['prediction'] | undefined)[],
  changeNow: Says,
): RuleCount {
  let ends = 0;
  for (const [at, row] of rows.entries()) {
    if (at > 0 && changeNow(predictions[at])) return { planned: 1, midJob: 0, ends };
    ends += row.ends;
  }
  return { planned: 0, midJob: ended?.how === 'worn' ? 1 : 0, ends };
}

function added(a: RuleCount, b: RuleCount): RuleCount {
  return { planned: a.planned + b.planned, midJob: a.midJob + b.midJob, ends: a.ends + b.ends };
}

function none(partId: string, kind: EdgeKind): RuleCounts {
  const zero = { planned: 0, midJob: 0, ends: 0 };
  return { partId, kind, edges: 0, predicted: zero, fixed: zero };
}
