import { checkPlan } from '../capability/check-plan';
import type { LineVerdict } from '../capability/line-verdict';
import { type SizeStatus, sizeStatuses } from '../capability/size-status';
import type { Ensemble } from '../ensemble/build-ensemble';
import {
  planArrivals,
  planConnections,
  planLines,
  requiredProbability,
  setItems,
  sizeProbes,
} from './plan-facts';
import { shopEnsemble } from './shop-ensemble';
import type { ShopFacts } from './shop-facts';
import { type CutInHand, type ToolForecast, toolForecast } from './tool-forecast';

/** What the shop can make and what its edges have left, at one version of its record: what every screen reads. */
export interface Outlook {
  readonly facts: ShopFacts;
  readonly ensemble: Ensemble;
  /** A verdict for every line of the open jobs, in the order in which they are served. */
  readonly lines: readonly LineVerdict[];
  /** Every size in use: can one end of it be made and accepted today? */
  readonly sizes: readonly SizeStatus[];
  forecast(toolId: string, cut: CutInHand): ToolForecast | undefined;
}

/** Computes the outlook from the shop's record: one ensemble, and every answer a count over it. */
export function computeOutlook(facts: ShopFacts): Outlook {
  const ensemble = shopEnsemble(facts);
  const lines = planLines(facts);
  const items = setItems(facts);
  const arrivals = planArrivals(facts);
  const { today } = facts;
  const targets = { requiredProbability: requiredProbability(facts.shop, 'ordinary'), floorProbability: 0.5 };
  const reference = facts.materials.find((material) => material.isReference);
  const plan = { today, items, arrivals, draws: ensemble, targets, lines };
  const connections = sizeProbes(facts);
  return {
    facts,
    ensemble,
    lines: checkPlan({ ...plan, connections: planConnections(facts) }),
    sizes: sizeStatuses({ ...plan, connections, materialId: reference?.id ?? 'reference' }),
    forecast: (toolId, cut) => toolForecast(facts, ensemble, { toolId, cut }),
  };
}
