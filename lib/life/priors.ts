import { invariant } from '../invariant';
import type { EdgeKind } from '../shop/vocabulary';

/** What is believed of one figure before the log speaks. `flat` says nothing at all; `fixed` does not listen to the log. */
export type Prior =
  | { readonly form: 'normal'; readonly mean: number; readonly sd: number }
  | { readonly form: 'flat' }
  | { readonly form: 'fixed'; readonly value: number };

export interface MaterialPrior {
  readonly materialId: string;
  /** Of the log of the wear factor against the reference material. */
  readonly logFactor: Prior;
}

/** Beliefs about one kind of edge, as data: kept with the shop's settings, shown on a screen, replaceable. */
export interface LifePriors {
  readonly logShape: Prior;
  /**
   * How likely it is that lives follow the log-logistic law and not Weibull's; the log then decides between them. Absent or 0:
   * Weibull lives for certain. Not read where the shape is flat or fixed: who says nothing of the scatter, or all of it, means
   * Weibull's.
   */
  readonly logLogisticChance?: number;
  /** Log median life of a new 3/8 in edge in reference exposure; used only while there is no first guess. */
  readonly logMedian: Prior;
  /** Change of log median with log tube size. */
  readonly sizeExponent: Prior;
  /** Of each part's own departure from its size's median; its mean must be 0 (normal or fixed). */
  readonly part: Prior;
  /** Change of log median with each regrind. */
  readonly regrind: Prior;
  /** Log wear factor of cutting dry. */
  readonly dry: Prior;
  /** Log wear factor of recutting a refused end. */
  readonly rework: Prior;
  /** The material whose factor is 1. */
  readonly referenceMaterialId: string;
  readonly materials: readonly MaterialPrior[];
  /** For a material that is cut but not in the list. */
  readonly unlistedMaterial: Prior;
  /** Share of a first guess's squared error that is common to all guesses of the kind: one person's optimism. */
  readonly guessSharedShare: number;
  /** Rate of incidents: gamma with this shape, on average one incident in so many median lives. */
  readonly incident: { readonly shape: number; readonly livesPerIncident: number };
}

export interface MaterialFactor {
  readonly materialId: string;
  readonly factor: number;
}

/** Median life of a new 3/8 in edge in cold-worked 316: common practice, no source. Turns for a die, mm³ for a blade. */
const DEFAULT_LIFE: Record<EdgeKind, number> = { die: 1206, blade: 3823 };
/** Lives with a longer tail than Weibull's are the rarer case, but cannot be ruled out from the armchair: this project's stated default. */
const LOG_LOGISTIC_CHANCE = 0.25;
const LIVES_PER_INCIDENT: Record<EdgeKind, number> = { die: 20, blade: 10 };

/**
 * The beliefs that a shop starts from. Shape, size, part, regrind and material spreads: this project's stated defaults.
 * Default life: middle of "60 to 220 ends of 3/8 medium pressure at 10.5 turns" (die) and of "35 to 120 cones of 59 mm³"
 * (blade), give or take a factor of 2.5. Dry 1.5 (0.9 to 2.5) and recutting 1.2 (0.8 to 1.8) times the wear.
 * Source: common practice, no source.
 */
export function defaultLifePriors(
  kind: EdgeKind,
  { referenceMaterialId, materials }: { referenceMaterialId: string; materials: readonly MaterialFactor[] },
): LifePriors {
  return {
    logShape: normal(Math.LN2, 0.35),
    logLogisticChance: LOG_LOGISTIC_CHANCE,
    logMedian: normal(Math.log(DEFAULT_LIFE[kind]), 0.7),
    sizeExponent: normal(-0.3, 0.4),
    part: normal(0, 0.3),
    regrind: normal(Math.log(0.85), 0.2),
    dry: normal(Math.log(1.5), 0.4),
    rework: normal(Math.log(1.2), 0.3),
    referenceMaterialId,
    materials: materials
      .filter(({ materialId }) => materialId !== referenceMaterialId)
      .map(({ materialId, factor }) => ({ materialId, logFactor: materialPrior(factor) })),
    unlistedMaterial: normal(0, 0.7),
    guessSharedShare: 0.7,
    incident: { shape: 0.5, livesPerIncident: LIVES_PER_INCIDENT[kind] },
  };
}

/** Belief about a material from its published factor: log-normal, spread 0.4 (about 1.7 either way, 10 to 90 %). */
export function materialPrior(factor: number): Prior {
  invariant(factor > 0 && Number.isFinite(factor), 'a material factor is above zero');
  return normal(Math.log(factor), 0.4);
}

/** A normal belief; a spread of zero fixes the figure. */
export function normal(mean: number, sd: number): Prior {
  invariant(
    Number.isFinite(mean) && sd >= 0,
    'a normal prior has a finite mean and a spread of zero or more',
  );
  return sd === 0 ? { form: 'fixed', value: mean } : { form: 'normal', mean, sd };
}
