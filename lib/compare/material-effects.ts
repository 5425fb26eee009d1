import type { Ensemble } from '../ensemble/build-ensemble';
import { type Band, bandOf } from '../ensemble/reasons';
import { normalQuantile } from '../numeric/normal';
import type { EdgeKind } from '../shop/vocabulary';

/** How fast a material wears one kind of edge, as the log now has it, beside what was believed before. */
export interface MaterialEffect {
  readonly materialId: string;
  readonly factor: Band;
  /** The belief of the first day; undefined for a material nobody described or a belief that says nothing. */
  readonly believed: Band | undefined;
}

/** The wear factor of every material that the priors or the log know, by id. Undefined for a kind without a fit. */
export function materialEffects(ensemble: Ensemble, kind: EdgeKind): MaterialEffect[] | undefined {
  const fit = ensemble.fit(kind);
  if (fit === undefined) return undefined;
  const listed = fit.priors.materials.map(({ materialId }) => materialId);
  const ids = [...new Set([...listed, ...fit.layout.unlistedMaterialIds])].sort();
  return ids.flatMap((materialId): MaterialEffect[] => {
    const factor = ensemble.materialFactor(kind, materialId);
    const prior = fit.priors.materials.find((material) => material.materialId === materialId)?.logFactor;
    if (factor === undefined) return [];
    const believed = prior?.form === 'normal' ? bandOfNormal(prior.mean, prior.sd) : undefined;
    return [{ materialId, factor: bandOf(factor), believed }];
  });
}

function bandOfNormal(mean: number, sd: number): Band {
  const z = normalQuantile(0.9);
  return { low: Math.exp(mean - z * sd), median: Math.exp(mean), high: Math.exp(mean + z * sd) };
}
