import type { Ensemble, ToolInHand } from '../ensemble/build-ensemble';
import { type CarryOn, carryOn } from '../replacement/carry-on';
import type { ChangeCosts } from '../replacement/change-costs';
import { edgeLife } from '../replacement/life-posterior';
import { longRunRates } from '../replacement/long-run-rates';
import { fixedCountSays } from './fixed-count';
import type { RowCut } from './log-event';

/** What a change of an edge of one part costs, and how many regrinds the edges that it is reckoned by have behind them. */
export interface Changing {
  readonly costs: ChangeCosts;
  readonly regrinds: number;
}

/** What could be said of changing the edge before a row, from only what was known when the row began. */
export interface ChangeCase {
  /** Ends until the question is asked again. */
  readonly workEnds: number;
  /** Whether the shop's fixed count would be passed within them. */
  readonly countPassed: boolean | undefined;
  /** Undefined without a price. */
  readonly carryOn: CarryOn | undefined;
}

/** Ends of a usual row of one size and kind, as far as the log has come. */
export class RowSizes {
  private readonly sums = new Map<string, { rows: number; ends: number }>();

  add(row: RowCut, kind: string): void {
    const key = `${kind} ${row.connectionId}`;
    const { rows, ends } = this.sums.get(key) ?? { rows: 0, ends: 0 };
    this.sums.set(key, { rows: rows + 1, ends: ends + row.ends });
  }

  /** Ends that a row is expected to come to: the mean of those before it, at most what is asked; else what is asked. */
  next(row: RowCut, kind: string): number {
    const asked = row.askedEnds ?? row.ends;
    const before = this.sums.get(`${kind} ${row.connectionId}`);
    return before === undefined ? asked : Math.min(asked, Math.max(1, Math.round(before.ends / before.rows)));
  }
}

/** Draws that the best age is sought over in a replay: enough for its cost to a hundredth. */
const AGE_DRAWS = 128;

/** Long-run cost of wear by part, as far as it was asked of one fit. */
export type PartRates = Map<string, Float64Array | undefined>;

/** What is asked about a tool before a row. */
export interface ChangeAsked {
  readonly row: RowCut;
  readonly workEnds: number;
  readonly usedEnds: number;
  readonly changeAtEnds: number | undefined;
  readonly changing: Changing | undefined;
}

/**
 * What both rules say of changing a tool before a row. `rates` keeps what was worked out for other rows of the same fit.
 * Source: formula (`carryOn`); the count by definition.
 */
export function changeCase(
  ensemble: Ensemble,
  tool: ToolInHand,
  { row, workEnds, usedEnds, changeAtEnds, changing }: ChangeAsked,
  rates: PartRates,
): ChangeCase {
  const countPassed =
    changeAtEnds === undefined
      ? undefined
      : fixedCountSays({ usedEnds, jobEnds: workEnds, changeAtEnds }) === 0;
  return {
    workEnds,
    countPassed,
    carryOn: changing && inMoney(ensemble, tool, row, workEnds, changing, rates),
  };
}

function inMoney(
  ensemble: Ensemble,
  tool: ToolInHand,
  row: RowCut,
  workEnds: number,
  { costs, regrinds }: Changing,
  rates: PartRates,
): CarryOn | undefined {
  const { toolId, kind, partId, odIn } = tool;
  if (!rates.has(partId)) {
    const life = edgeLife(ensemble, kind, { partId, odIn, regrinds });
    rates.set(partId, life && longRunRates(life, costs, AGE_DRAWS));
  }
  const perUnit = rates.get(partId);
  const residual = ensemble.residualLife(toolId);
  const factor = ensemble.wearFactor(kind, row);
  if (perUnit === undefined || residual === undefined || factor === undefined) return undefined;
  const work = factor.map((each) => each * row.exposurePerEnd * workEnds);
  return carryOn(residual, work, perUnit, costs);
}
