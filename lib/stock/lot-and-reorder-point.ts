import { invariant } from '../invariant';
import { economicOrderQuantity } from '../lot-size/eoq';
import { normalQuantile } from '../numeric/normal';
import { standardNormalLoss } from './normal-loss';

/** Steady demand a year, normal over the lead time, with what ordering, keeping and running short cost. */
export interface ContinuousReview {
  readonly demandMean: number;
  /** Standard deviation of the demand of one unit of time. */
  readonly demandSd: number;
  /** In the same unit of time. */
  readonly leadTime: number;
  readonly orderCost: number;
  /** Keeping a unit for one unit of time. */
  readonly holdingCost: number;
  /** A unit short (in `eoqWithSafetyStock`: for one unit of time; in `lotAndReorderPoint`: once). */
  readonly shortCost: number;
}

export interface LotAndPoint {
  readonly reorderPoint: number;
  readonly lot: number;
}

/**
 * Order a lot whenever stock and orders together fall to the reorder point: the economic lot, and a reorder point whose
 * chance of being enough is short ÷ (short + holding). Domain: figures > 0. Source: formula (EOQ plus safety stock).
 */
export function eoqWithSafetyStock(review: ContinuousReview): LotAndPoint {
  const { shortCost, holdingCost } = review;
  const { mean, sd } = overLead(review);
  const { quantity } = economicOrderQuantity({ ...review, demand: review.demandMean });
  return { reorderPoint: mean + sd * normalQuantile(shortCost / (shortCost + holdingCost)), lot: quantity };
}

/**
 * The same with lot and point suited to each other: the lot is raised by what a cycle loses, Q = √(2·demand·(order +
 * short·E[units short]) ÷ holding), the point taken where 1 − Φ = Q·holding ÷ (short·demand), until neither moves.
 * Undefined where running short is so cheap that no point answers. Source: formula (Hadley and Whitin 1963).
 */
export function lotAndReorderPoint(review: ContinuousReview): LotAndPoint | undefined {
  const { demandMean, orderCost, holdingCost, shortCost } = review;
  const { mean, sd } = overLead(review);
  let lot = economicOrderQuantity({ ...review, demand: demandMean }).quantity;
  for (let step = 0; step < 1000; step++) {
    const tail = (lot * holdingCost) / (shortCost * demandMean);
    if (tail >= 1) return undefined;
    const z = normalQuantile(1 - tail);
    const short = sd * standardNormalLoss(z);
    const next = Math.sqrt((2 * demandMean * (orderCost + shortCost * short)) / holdingCost);
    if (Math.abs(next - lot) <= 1e-13 * lot) return { reorderPoint: mean + z * sd, lot: next };
    lot = next;
  }
  return undefined;
}

function overLead({ demandMean, demandSd, leadTime }: ContinuousReview): { mean: number; sd: number } {
  invariant(leadTime >= 0 && demandSd >= 0, 'a lead time and a spread are 0 or more');
  return { mean: demandMean * leadTime, sd: demandSd * Math.sqrt(leadTime) };
}
