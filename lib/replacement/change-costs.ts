import type { Costs } from '../shop/costs';
import type { JOB_VALUES } from '../shop/job';

export type JobValue = (typeof JOB_VALUES)[number];

/** What one change of an edge costs, in any one currency unit, the edge itself counted in both. */
export interface ChangeCosts {
  /** Changed between jobs, at a time of the shop's choosing. */
  readonly plannedCost: number;
  /** Changed because it wore out or was lost in the middle of a job: with the spoilt end and the time lost. */
  readonly failureCost: number;
}

/** Why no age is worth changing at: the edge is run until it wears out. */
export type RunReason = 'does-not-age' | 'failure-costs-no-more' | 'wears-out-first' | 'saves-too-little';

/** When to change an edge so that it costs least in the long run. */
export interface ReplacementAge {
  /** Exposure at which to change it; null: run it to wear-out. */
  readonly age: number | null;
  readonly runReason: RunReason | null;
  /** Long-run cost per unit of exposure, changing at that age. */
  readonly costRate: number;
  /** The same without ever changing early. */
  readonly runCostRate: number;
  /** Share of the cost that changing early saves, 0 to 1. */
  readonly saving: number;
  /** Share of edges that get to that age; the others wear out before. Null when run to wear-out. */
  readonly survivalAtAge: number | null;
}

/** What changing an edge costs, the edge itself counted in: between jobs, and in the middle of one of such a value. */
export function changeCosts(edgeMinor: number, costs: Costs, value: JobValue): ChangeCosts {
  const spoilt = value === 'precious' ? costs.spoiltPreciousMinor : costs.spoiltEndMinor;
  return {
    plannedCost: edgeMinor + costs.plannedChangeMinor,
    failureCost: edgeMinor + costs.midJobChangeMinor + spoilt,
  };
}
