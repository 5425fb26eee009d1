import type { Ensemble } from '../ensemble/build-ensemble';
import { type KindDraws, kindDrawsOf } from '../ensemble/kind-draws';
import type { EdgeKind } from '../shop/vocabulary';

const kept = new WeakMap<Ensemble, Map<EdgeKind, KindDraws>>();

/**
 * The draws of the figures of one kind, the same to the digit as those behind the ensemble; worked out once to an ensemble.
 * Undefined where the kind has no fit.
 */
export function ensembleDraws(ensemble: Ensemble, kind: EdgeKind): KindDraws | undefined {
  const fit = ensemble.fit(kind);
  if (fit === undefined) return undefined;
  const held = kept.get(ensemble) ?? new Map<EdgeKind, KindDraws>();
  kept.set(ensemble, held);
  const draws = held.get(kind) ?? kindDrawsOf(fit, ensemble.drawCount);
  held.set(kind, draws);
  return draws;
}
