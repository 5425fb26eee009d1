import type { Ensemble } from '../ensemble/build-ensemble';
import { scaleFromMedian } from '../life/weibull';
import { partSizes } from '../outlook/edge-histories';
import type { ShopFacts } from '../outlook/shop-facts';
import type { EdgeKind } from '../shop/vocabulary';
import type { LifePosterior } from './life-posterior';

/** Draws that a curve is averaged over: evenly spaced out of the ensemble’s, whose order means nothing. */
const CURVE_DRAWS = 512;

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
  const draws = ensemble.draws(kind);
  const median = odIn === undefined ? undefined : ensemble.medianLife(kind, { partId, odIn, regrinds });
  if (draws === undefined || median === undefined) return undefined;
  const { shape, incidentRate } = draws;
  const scale = median.map((life, k) => scaleFromMedian({ shape: shape[k] as number, median: life }));
  return { shape, scale, incidentRate };
}

/** Every so many-th draw of a life: enough for a mean, at a part of the time. */
export function thinned(life: LifePosterior, draws = CURVE_DRAWS): LifePosterior {
  const stride = Math.max(1, Math.floor(life.shape.length / draws));
  const some = (values: Float64Array) => values.filter((_, k) => k % stride === 0);
  return { shape: some(life.shape), scale: some(life.scale), incidentRate: some(life.incidentRate) };
}
