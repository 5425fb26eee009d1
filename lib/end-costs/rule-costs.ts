import { type ChangeCosts, changeCosts } from '../replacement/change-costs';
import { allowedRegrinds, edgePriceMinor } from '../replacement/edge-price';
import type { Costs } from '../shop/costs';
import type { Part } from '../shop/part';
import { costPerWear } from './cost-per-wear';
import type { RuleCounts } from './rule-counts';

/** What two rules cost on the edges of one part, minor units; null where nothing was cut or no price is known. */
export interface RuleCost extends RuleCounts {
  readonly predictedPer100Minor: number | null;
  readonly fixedPer100Minor: number | null;
  /** What the estimate saved over the fixed count on the work of the log; negative where it cost more. */
  readonly savedMinor: number | null;
  /** Standard error of that: how much of it chance among so few edges could have made. */
  readonly savedErrorMinor: number | null;
  /** The cheaper rule, where chance alone would seldom (1 in 10) have shown so much. */
  readonly cheaper: 'predicted' | 'fixed' | 'not-told';
}

/** What a change of an edge of a part costs on ordinary work; null without a price. Both the replay and its sum use it. */
export function partChangeCosts(part: Part, costs: Costs): ChangeCosts | null {
  const { regrindMinor } = costs;
  const edgeMinor = edgePriceMinor(part, { regrinds: allowedRegrinds(part, costs), regrindMinor });
  return edgeMinor === null || !part.priceMinor ? null : changeCosts(edgeMinor, costs, 'ordinary');
}

/**
 * The two rules in money. A planned change costs the edge and the change; one in mid-job the edge, the time lost and a spoilt end. Each
 * rule's cost of wear (`costPerWear`) over the wear of the log is what it would have cost; the saving is the difference, its standard
 * error by leaving out one edge at a time under both rules: (n − 1)/n·Σ(d_i − d̄)². Source: formula (jackknife, Tukey 1958).
 */
export function ruleCosts(counts: readonly RuleCounts[], parts: readonly Part[], costs: Costs): RuleCost[] {
  return counts.map((count) => {
    const part = parts.find(({ id }) => id === count.partId);
    const change = part === undefined ? null : partChangeCosts(part, costs);
    const per100 = (rate: number | null) =>
      rate === null || count.ends === 0 ? null : (100 * rate * count.wear) / count.ends;
    const ours = change && costPerWear(count.cycles.predicted, change);
    const fixed = change && costPerWear(count.cycles.fixed, change);
    const saved = ours === null || fixed === null ? null : (fixed - ours) * count.wear;
    const error = saved === null || change === null ? null : errorOf(count, change);
    return {
      ...count,
      ...{ predictedPer100Minor: per100(ours), fixedPer100Minor: per100(fixed) },
      savedMinor: saved === null ? null : Math.round(saved),
      savedErrorMinor: error,
      cheaper: cheaperOf(saved, error),
    };
  });
}

/** The whole shop's saving with its standard error: the parts share no edge. */
export function wholeSaving(rows: readonly RuleCost[]): {
  readonly savedMinor: number;
  readonly errorMinor: number;
  readonly cheaper: RuleCost['cheaper'];
} {
  const savedMinor = rows.reduce((sum, row) => sum + (row.savedMinor ?? 0), 0);
  const errorMinor = Math.sqrt(rows.reduce((sum, row) => sum + (row.savedErrorMinor ?? 0) ** 2, 0));
  return { savedMinor, errorMinor, cheaper: cheaperOf(savedMinor, errorMinor) };
}

/** One chance in ten either way: the normal's 95 % point. Source: formula. */
const TOLD = 1.6449;

function cheaperOf(saved: number | null, error: number | null): RuleCost['cheaper'] {
  if (saved === null || error === null || Math.abs(saved) <= TOLD * error) return 'not-told';
  return saved > 0 ? 'predicted' : 'fixed';
}

function errorOf({ cycles, wear }: RuleCounts, change: ChangeCosts): number | null {
  const count = cycles.fixed.length;
  const without = cycles.fixed.map((_, i) => {
    const ours = costPerWear(allBut(cycles.predicted, i), change);
    const fixed = costPerWear(allBut(cycles.fixed, i), change);
    return ours === null || fixed === null ? null : (fixed - ours) * wear;
  });
  const known = without.flatMap((saved) => saved ?? []);
  if (count < 2 || known.length < count) return null;
  const mean = known.reduce((sum, saved) => sum + saved, 0) / count;
  const spread = known.reduce((sum, saved) => sum + (saved - mean) ** 2, 0);
  return Math.sqrt(((count - 1) / count) * spread);
}

function allBut<T>(list: readonly T[], at: number): T[] {
  return list.filter((_, i) => i !== at);
}
