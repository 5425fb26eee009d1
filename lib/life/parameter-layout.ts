import type { FirstGuess } from './first-guess';
import type { EdgeHistory, ExposurePart } from './observation';
import type { LifePriors, Prior } from './priors';

/** Every figure of one kind's life model, in a fixed order: the same inputs in any order give the same layout. */
export interface ParameterLayout {
  readonly names: readonly string[];
  readonly priors: readonly Prior[];
  readonly indexOf: Readonly<Record<string, number>>;
  /** Positions of the figures that the fit may move. */
  readonly free: readonly number[];
  /** Materials that were cut without standing in the list of priors. */
  readonly unlistedMaterialIds: readonly string[];
  /** Belief that lives are log-logistic, 0 where the shape is not a belief. */
  readonly logLogisticChance: number;
}

/** Tube size at which `logMedian` is the log of the median life, inches. */
export const REFERENCE_OD_IN = 0.375;

export const PART = 'part:';
export const MATERIAL = 'material:';

/**
 * Names the figures: shape, median, size, regrind, dry, rework, the shared error of the first guesses, then one for each
 * part and material that the data, the guesses or the priors mention.
 */
export function layOut(
  histories: readonly EdgeHistory[],
  guesses: readonly FirstGuess[],
  priors: LifePriors,
): ParameterLayout {
  const flat: Prior = { form: 'flat' };
  const rows: [name: string, prior: Prior][] = [
    ['logShape', priors.logShape],
    ['logMedian', guesses.length > 0 ? flat : priors.logMedian],
    ['sizeExponent', priors.sizeExponent],
    ['regrind', priors.regrind],
    ['dry', priors.dry],
    ['rework', priors.rework],
  ];
  if (guesses.length > 0) rows.push(['guessError', { form: 'normal', mean: 0, sd: 1 }]);
  for (const partId of partIdsOf(histories, guesses)) rows.push([PART + partId, priors.part]);
  const known = new Map(priors.materials.map((material) => [material.materialId, material.logFactor]));
  known.delete(priors.referenceMaterialId);
  const unlistedMaterialIds = [...materialIdsOf(histories)].filter(
    (materialId) => materialId !== priors.referenceMaterialId && !known.has(materialId),
  );
  for (const materialId of unlistedMaterialIds) known.set(materialId, priors.unlistedMaterial);
  for (const [materialId, prior] of [...known].sort(([a], [b]) => (a < b ? -1 : 1)))
    rows.push([MATERIAL + materialId, prior]);
  return {
    names: rows.map(([name]) => name),
    priors: rows.map(([, prior]) => prior),
    indexOf: Object.fromEntries(rows.map(([name], i) => [name, i])),
    free: rows.flatMap(([, prior], i) => (prior.form === 'fixed' ? [] : [i])),
    unlistedMaterialIds: unlistedMaterialIds.sort(),
    logLogisticChance: priors.logShape.form === 'normal' ? (priors.logLogisticChance ?? 0) : 0,
  };
}

/** Where each figure starts: at its prior's mean, or at 0. */
export function startOf(layout: ParameterLayout): Float64Array {
  return Float64Array.from(layout.priors, (prior) => {
    if (prior.form === 'normal') return prior.mean;
    return prior.form === 'fixed' ? prior.value : 0;
  });
}

function partIdsOf(histories: readonly EdgeHistory[], guesses: readonly FirstGuess[]): string[] {
  const ids = new Set(histories.map((history) => history.partId));
  for (const guess of guesses) if (guess.partId !== undefined) ids.add(guess.partId);
  return [...ids].sort();
}

function materialIdsOf(histories: readonly EdgeHistory[]): Set<string> {
  const ids = new Set<string>();
  const add = ({ materialId, base }: ExposurePart): void => {
    if (base > 0) ids.add(materialId);
  };
  for (const history of histories) {
    history.before.forEach(add);
    history.during.forEach(add);
  }
  return ids;
}
