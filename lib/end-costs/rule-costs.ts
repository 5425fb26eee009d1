import type { Costs } from '../shop/costs';
import type { Part } from '../shop/part';
import type { RuleCount, RuleCounts } from './rule-counts';

/** What two rules cost per 100 ends of one part, minor units; null where nothing was cut or no price is known. */
export interface RuleCost extends RuleCounts {
  readonly predictedPer100Minor: number | null;
  readonly fixedPer100Minor: number | null;
  /** What the estimate saved over the fixed count on the ends of the log; negative where it cost more. */
  readonly savedMinor: number | null;
}

/**
 * What one edge of a part costs: a die its price; a blade its price and its regrinds spread over all its edges.
 * Null without a price. Source: formula.
 */
export function edgePriceMinor(
  { role, priceMinor, regrindLimit }: Pick<Part, 'role' | 'priceMinor' | 'regrindLimit'>,
  { regrindMinor }: Pick<Costs, 'regrindMinor'>,
): number | null {
  if (priceMinor === null) return null;
  return role === 'blade' ? (priceMinor + regrindLimit * regrindMinor) / (1 + regrindLimit) : priceMinor;
}

/**
 * The two rules in money: a planned change costs the edge and the change; one in mid-job the edge, the time lost and a
 * spoilt end. The saving is the difference a 100 ends, over the ends that were cut. Source: formula.
 */
export function ruleCosts(counts: readonly RuleCounts[], parts: readonly Part[], costs: Costs): RuleCost[] {
  return counts.map((count) => {
    const part = parts.find(({ id }) => id === count.partId);
    const price = part === undefined ? null : edgePriceMinor(part, costs);
    const predictedPer100Minor = per100(count.predicted, price, costs);
    const fixedPer100Minor = per100(count.fixed, price, costs);
    const known = predictedPer100Minor !== null && fixedPer100Minor !== null;
    const savedMinor = known
      ? Math.round(((fixedPer100Minor - predictedPer100Minor) * count.predicted.ends) / 100)
      : null;
    return { ...count, predictedPer100Minor, fixedPer100Minor, savedMinor };
  });
}

function per100({ planned, midJob, ends }: RuleCount, price: number | null, costs: Costs): number | null {
  if (price === null || ends === 0) return null;
  const plannedMinor = planned * (price + costs.plannedChangeMinor);
  const midJobMinor = midJob * (price + costs.midJobChangeMinor + costs.spoiltEndMinor);
  return (100 * (plannedMinor + midJobMinor)) / ends;
}
