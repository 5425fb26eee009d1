import { addDays } from '../calendar/day';
import { checkPlan, type PlanInput } from '../capability/check-plan';
import { laterDay } from '../capability/line-order';
import type { LineVerdict } from '../capability/line-verdict';
import type { Arrival } from '../capability/plan-input';
import { type SizeStatus, sizeStatuses } from '../capability/size-status';
import type { Ensemble } from '../ensemble/build-ensemble';
import { RECEIVING_DAYS } from '../outlook/order-arrivals';
import { referenceMaterialId, sizeProbes } from '../outlook/plan-facts';
import type { ShopFacts } from '../outlook/shop-facts';
import { shopPlan } from '../outlook/shop-plan';
import { ok, type Result } from '../result';
import { applyChanges, type ChangedRecord } from './apply-changes';
import type { Change } from './change';
import { changedDraws } from './changed-draws';

/** The plan as it is, and what a change is tried on. */
export interface WhatIfBase {
  readonly facts: ShopFacts;
  readonly ensemble: Ensemble;
}

/** The record with the changes, and what the plan check says of it. */
export interface WhatIf {
  readonly facts: ShopFacts;
  readonly plan: PlanInput;
  readonly lines: readonly LineVerdict[];
  sizes(): readonly SizeStatus[];
}

/**
 * What the plan check would say if things were otherwise, on the same futures: no change gives the very verdicts that stand.
 * Nothing is saved. Refuses a change that cannot be.
 */
export function whatIf({ facts, ensemble }: WhatIfBase, changes: readonly Change[]): Result<WhatIf> {
  const changed = applyChanges(facts, changes);
  if (!changed.ok) return changed;
  const after = changed.value.facts;
  const draws = changedDraws(ensemble, facts, after);
  const plan = slipped(shopPlan(after, draws), changed.value);
  return ok({
    facts: after,
    plan,
    lines: checkPlan(plan),
    sizes: () =>
      sizeStatuses({ ...plan, connections: sizeProbes(after), materialId: referenceMaterialId(after) }),
  });
}

/** Orders that slip come so many days later in every draw, or sooner, but none before today: the same luck, another day. */
function slipped(plan: PlanInput, { slipDays }: ChangedRecord): PlanInput {
  if (slipDays.size === 0) return plan;
  return {
    ...plan,
    arrivals: plan.arrivals.map((arrival) => slip(arrival, slipDays.get(arrival.orderId) ?? 0, plan.today)),
  };
}

function slip(arrival: Arrival, days: number, today: string): Arrival {
  if (days === 0) return arrival;
  const { expectedOnDay, arrivalDayDraws } = arrival;
  return {
    ...arrival,
    expectedOnDay: expectedOnDay < today ? expectedOnDay : laterDay(today, addDays(expectedOnDay, days)),
    arrivalDayDraws:
      arrivalDayDraws === undefined
        ? undefined
        : Float64Array.from(arrivalDayDraws, (inDays) => Math.max(RECEIVING_DAYS, inDays + days)),
  };
}
