import type { Ensemble } from '../ensemble/build-ensemble';
import { isEdgeKind } from '../outlook/edge-histories';
import { exposurePerEnd, ownConnection } from '../outlook/part-wear';
import type { ShopFacts } from '../outlook/shop-facts';
import { DEFAULT_COSTS } from '../shop/costs';
import type { Connection } from '../shop/noun';
import type { Part } from '../shop/part';
import type { EdgeKind } from '../shop/vocabulary';
import { type ChangeCosts, changeCosts, type JobValue, type ReplacementAge } from './change-costs';
import { type CycleCurves, cycleCurves } from './cycle-curves';
import { edgePriceMinor } from './edge-price';
import { thinned } from './life-posterior';
import { partLife } from './part-life';
import { partRegrind } from './part-regrind';
import { posteriorReplacementAge } from './posterior-age';
import type { RegrindAdvice } from './regrind-or-buy';

/** A planned change that saves less than this is more trouble than it is worth. Common practice, no source. */
export const WORTH_PLANNING = 0.01;

/** When to change edges of a part on work of one value. */
export interface ValueReplacement extends ReplacementAge {
  readonly costs: ChangeCosts;
  /** Ends of the part’s own connection at which to change a new edge; null: run it to wear-out. */
  readonly atEnds: number | null;
  /** Money per 100 of those ends, minor units: changing at that age, and running every edge to wear-out. */
  readonly plannedPer100Minor: number;
  readonly runPer100Minor: number;
}

/** When to change the edges of one part, and what one more regrind is worth. */
export interface PartReplacement {
  readonly part: Part;
  readonly kind: EdgeKind;
  readonly connection: Connection;
  /** Exposure of one end of that connection in the reference material. */
  readonly perEnd: number;
  /** What one edge costs to have: the price, or the mean over a blade’s life of its price and its regrinds. Minor units. */
  readonly edgeMinor: number;
  readonly byValue: Readonly<Record<JobValue, ValueReplacement>>;
  readonly regrind: RegrindAdvice | null;
}

/**
 * When to change the edges of a part: the cheapest age in the long run on ordinary work and on work that cannot be remade,
 * from everything that is believed about its life, and whether to regrind. Undefined for a part without an edge, a
 * connection or a price.
 */
export function partReplacement(
  facts: ShopFacts,
  ensemble: Ensemble,
  part: Part,
): PartReplacement | undefined {
  const { role: kind, priceMinor } = part;
  const connection = ownConnection(facts, part);
  if (!isEdgeKind(kind) || connection === undefined || priceMinor === null || priceMinor === 0)
    return undefined;
  const life = partLife(facts, ensemble, { partId: part.id, kind });
  if (life === undefined) return undefined;
  const costs = facts.costs ?? DEFAULT_COSTS;
  const perEnd = exposurePerEnd(kind, connection);
  const regrind = partRegrind(facts, ensemble, part);
  const times = regrind?.bestRegrinds ?? 0;
  const { regrindMinor } = costs;
  const edgeMinor = edgePriceMinor(part, { regrinds: times, regrindMinor }) ?? priceMinor;
  const curves = cycleCurves(thinned(life));
  const atValue = (value: JobValue) => valueReplacement(curves, changeCosts(edgeMinor, costs, value), perEnd);
  const byValue = { ordinary: atValue('ordinary'), precious: atValue('precious') };
  return { part, kind, connection, perEnd, edgeMinor, byValue, regrind };
}

function valueReplacement(curves: CycleCurves, costs: ChangeCosts, perEnd: number): ValueReplacement {
  const best = posteriorReplacementAge(curves, costs);
  const per100 = 100 * perEnd;
  const worth = best.age !== null && best.saving >= WORTH_PLANNING;
  const age = worth ? best.age : null;
  return {
    ...best,
    age,
    runReason: worth ? null : (best.runReason ?? 'saves-too-little'),
    survivalAtAge: worth ? best.survivalAtAge : null,
    costs,
    atEnds: age === null ? null : age / perEnd,
    plannedPer100Minor: (worth ? best.costRate : best.runCostRate) * per100,
    runPer100Minor: best.runCostRate * per100,
  };
}
