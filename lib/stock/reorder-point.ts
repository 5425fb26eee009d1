import { invariant } from '../invariant';
import { normalQuantile } from '../numeric/normal';
import { standardNormalLoss } from './normal-loss';

/** Demand of one period, and periods that an order takes, each with its spread; independent of each other. */
export interface LeadDemand {
  readonly demandMean: number;
  readonly demandSd?: number;
  readonly leadMean: number;
  readonly leadSd?: number;
}

/**
 * Demand while an order is on its way: mean d·L, sd √(L·σd² + d²·σL²). Domain: figures >= 0. Source: formula.
 */
export function demandInLeadTime({ demandMean, demandSd = 0, leadMean, leadSd = 0 }: LeadDemand): {
  readonly mean: number;
  readonly sd: number;
} {
  return {
    mean: demandMean * leadMean,
    sd: Math.sqrt(leadMean * demandSd ** 2 + (demandMean * leadSd) ** 2),
  };
}

/** Where to reorder, and the part of it that is there for bad luck. */
export interface ReorderPoint {
  readonly reorderPoint: number;
  readonly safetyStock: number;
  /** Standard deviations of safety. */
  readonly z: number;
}

/**
 * Reorder point for something used by the hundred: mean demand in the lead time plus z standard deviations, z from the
 * chance of not running out in a cycle. Slow items: poissonReorderPoint. Domain: sd >= 0, 0 < service < 1.
 * Source: formula (normal theory).
 */
export function reorderPoint(
  demand: { readonly mean: number; readonly sd: number },
  service: number,
): ReorderPoint {
  invariant(service > 0 && service < 1, 'reorderPoint requires a service level between 0 and 1');
  return reorderPointAt(demand, normalQuantile(service));
}

/** The same with z stated, for those who read it off a table. */
export function reorderPointAt(
  { mean, sd }: { readonly mean: number; readonly sd: number },
  z: number,
): ReorderPoint {
  const safetyStock = z * sd;
  return { reorderPoint: mean + safetyStock, safetyStock, z };
}

/** Units short in a cycle on average at z standard deviations of safety: sd·L(z). Source: formula. */
export function shortPerCycle(sd: number, z: number): number {
  return sd * standardNormalLoss(z);
}

/**
 * Fill rate: the share of all units that is there when asked for, 1 − sd·L(z)/Q, with lots of Q. Domain: lot > 0.
 * Source: formula (type 2 service).
 */
export function fillRate({
  sd,
  z,
  lot,
}: {
  readonly sd: number;
  readonly z: number;
  readonly lot: number;
}): number {
  invariant(lot > 0, 'fillRate requires a lot above 0');
  return 1 - shortPerCycle(sd, z) / lot;
}
