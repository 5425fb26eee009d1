import type { Ensemble } from '../ensemble/build-ensemble';
import { isEdgeKind } from '../outlook/edge-histories';
import type { ShopFacts } from '../outlook/shop-facts';
import { type Costs, DEFAULT_COSTS } from '../shop/costs';
import type { Part } from '../shop/part';
import { changeCosts } from './change-costs';
import { thinned } from './life-posterior';
import { partLife } from './part-life';
import { type RegrindAdvice, regrindOrBuy } from './regrind-or-buy';

type Facts = Pick<ShopFacts, 'parts' | 'connections' | 'costs'>;

const kept = new WeakMap<Ensemble, Map<string, { part: Part; costs: Costs; found: RegrindAdvice | null }>>();

/**
 * Regrind or buy for one part, once to an ensemble, its price and the shop's costs: the one decision that the page on replacement shows and
 * that orders count on. Null for what is not reground, or without a price for it or for a new one.
 */
export function partRegrind(facts: Facts, ensemble: Ensemble, part: Part): RegrindAdvice | null {
  const costs = facts.costs ?? DEFAULT_COSTS;
  const mine = kept.get(ensemble) ?? new Map();
  kept.set(ensemble, mine);
  const known = mine.get(part.id);
  if (known?.part === part && known.costs === costs) return known.found;
  const found = advise(facts, ensemble, part, costs);
  mine.set(part.id, { part, costs, found });
  return found;
}

function advise(facts: Facts, ensemble: Ensemble, part: Part, costs: Costs): RegrindAdvice | null {
  const { role: kind, priceMinor, regrindLimit } = part;
  if (!isEdgeKind(kind) || !priceMinor || regrindLimit === 0 || costs.regrindMinor === 0) return null;
  const offers = Array.from({ length: regrindLimit + 1 }, (_, regrinds) => {
    const life = partLife(facts, ensemble, { partId: part.id, kind, regrinds });
    const edgeMinor = regrinds === 0 ? priceMinor : costs.regrindMinor;
    return life && { life: thinned(life), costs: changeCosts(edgeMinor, costs, 'ordinary') };
  });
  const known = offers.flatMap((offer) => offer ?? []);
  return known.length === 0 ? null : regrindOrBuy(known);
}
