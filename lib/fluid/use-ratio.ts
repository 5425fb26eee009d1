import { invariant } from '../invariant';
import { gammaQuantile } from '../numeric/gamma';

/** The shop's own factor counts for as much as this volume of planned use, mL. Common practice, no source. */
export const PRIOR_PLANNED_ML = 160;
/** Planned use that counts as one independent observation of the ratio, mL: some thirty ends. Common practice, no source. */
export const PLANNED_ML_PER_OBSERVATION = 20;

/** Planned and measured use of one bottle between its first and its last level. */
export interface MeasuredUse {
  readonly plannedMl: number;
  readonly measuredMl: number;
}

/** What is known of measured ÷ planned use: an inverse-gamma law of the given shape and scale, and its mean. */
export interface UseRatio {
  readonly shape: number;
  readonly scale: number;
  readonly mean: number;
}

/**
 * How many times the planned use really leaves the bottle, learnt from level readings and drawn towards the shop's factor:
 * measured use is a gamma figure about ratio × planned with one unit of shape per 20 mL planned, and the ratio is inverse gamma
 * before. Then its mean is (factor × 160 mL + Σ measured) ÷ (160 mL + Σ planned): the factor exactly where nothing was read, and
 * the plain ratio once much has been. Splitting a reading in two changes nothing.
 * Domain: factor above 0, volumes of 0 or more. Source: formula, conjugate gamma law.
 */
export function learnUseRatio(
  factor: number,
  uses: readonly MeasuredUse[],
  priorPlannedMl: number = PRIOR_PLANNED_ML,
): UseRatio {
  invariant(factor > 0 && priorPlannedMl > 0, 'learnUseRatio requires a factor above 0');
  invariant(
    uses.every(({ plannedMl, measuredMl }) => plannedMl >= 0 && measuredMl >= 0),
    'learnUseRatio requires volumes of 0 or more',
  );
  const plannedMl = priorPlannedMl + uses.reduce((sum, use) => sum + use.plannedMl, 0);
  const measuredMl = factor * priorPlannedMl + uses.reduce((sum, use) => sum + use.measuredMl, 0);
  const shape = 1 + plannedMl / PLANNED_ML_PER_OBSERVATION;
  const scale = measuredMl / PLANNED_ML_PER_OBSERVATION;
  return { shape, scale, mean: scale / (shape - 1) };
}

/**
 * The ratio that is not exceeded with probability p. Domain: 0 < p < 1. Source: formula, the reciprocal of a gamma quantile.
 */
export function ratioQuantile({ shape, scale }: UseRatio, p: number): number {
  invariant(p > 0 && p < 1, 'ratioQuantile requires a probability between 0 and 1');
  return scale / gammaQuantile({ shape, rate: 1 }, 1 - p);
}

/** Evenly spread ratios of equal weight, rising: the middles of `count` equal slices of its law. */
export function ratioDraws(ratio: UseRatio, count: number): Float64Array {
  invariant(Number.isInteger(count) && count > 0, 'ratioDraws requires a whole count above 0');
  return Float64Array.from({ length: count }, (_, k) => ratioQuantile(ratio, (k + 0.5) / count));
}
