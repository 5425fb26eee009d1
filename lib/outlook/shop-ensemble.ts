import type { Ensemble } from '../ensemble/build-ensemble';
import type { ShopFacts } from './shop-facts';
import { shopFutures } from './shop-futures';

/** The shop's one ensemble of futures: both kinds fitted to its record, every tool that can still cut, every part. */
export function shopEnsemble(facts: ShopFacts): Ensemble {
  return shopFutures(facts).ensemble;
}
