import type { Ensemble } from '../ensemble/build-ensemble';
import { isEdgeKind } from '../outlook/edge-histories';
import type { ShopFacts } from '../outlook/shop-facts';
import type { Part } from '../shop/part';
import { type PartReplacement, partReplacement } from './part-replacement';
import { compareToolPlans, type ToolPlan, toolPlans } from './tool-plan';

/** When to change what, for the whole shop. */
export interface ShopReplacement {
  /** Dies before blades, small sizes first. */
  readonly parts: readonly PartReplacement[];
  /** Every edge that is here, the one to be changed first on top. */
  readonly tools: readonly ToolPlan[];
  /** Parts with an edge that have no price yet: nothing can be said of them in money. */
  readonly unpriced: readonly Part[];
}

const kept = new WeakMap<Ensemble, { facts: ShopFacts; found: ShopReplacement }>();

/** Works out when to change what, once to an ensemble and its facts. For the page on replacement and the calendar. */
export function shopReplacement(facts: ShopFacts, ensemble: Ensemble): ShopReplacement {
  const known = kept.get(ensemble);
  if (known?.facts === facts) return known.found;
  const parts = facts.parts
    .flatMap((part) => partReplacement(facts, ensemble, part) ?? [])
    .sort((a, b) => rankOf(a) - rankOf(b));
  const found: ShopReplacement = {
    parts,
    tools: parts.flatMap((part) => toolPlans(facts, ensemble, part)).sort(compareToolPlans(ensemble)),
    unpriced: facts.parts.filter((part) => isEdgeKind(part.role) && !part.priceMinor),
  };
  kept.set(ensemble, { facts, found });
  return found;
}

function rankOf({ kind, connection }: PartReplacement): number {
  const size = connection.odNum / connection.odDen + (connection.service === 'high' ? 1e-6 : 0);
  return (kind === 'die' ? 0 : 1000) + size;
}
