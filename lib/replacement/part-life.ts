import type { Ensemble } from '../ensemble/build-ensemble';
import { partSizes } from '../outlook/edge-histories';
import type { ShopFacts } from '../outlook/shop-facts';
import type { EdgeKind } from '../shop/vocabulary';
import { edgeLife, type LifePosterior } from './life-posterior';

/**
 * The life of an edge of a part after so many regrinds, draw by draw of the shop's ensemble: Weibull wear and the rate of
 * incidents. Undefined for a part without an edge, or a kind that nothing is known of.
 */
export function partLife(
  facts: Pick<ShopFacts, 'parts' | 'connections'>,
  ensemble: Ensemble,
  { partId, kind, regrinds = 0 }: { partId: string; kind: EdgeKind; regrinds?: number },
): LifePosterior | undefined {
  const odIn = partSizes(facts).get(partId);
  return odIn === undefined ? undefined : edgeLife(ensemble, kind, { partId, odIn, regrinds });
}
