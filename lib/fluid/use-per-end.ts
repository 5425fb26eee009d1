import { invariant } from '../invariant';

/** Drops on one cone: 4 to 6 at the start, 2 to 3 more twice on the way. Common practice, no source. */
export const CONE_DROPS = 10;
/** Drops at the start of a thread and again at every second turn, in the mean. Common practice, no source. */
export const DROPS_PER_SECOND_TURN = 3;
/** Drops in a millilitre, until the bottle's own count is known. Water 20; oils 34 to 68. A setting per bottle. */
export const DROPS_PER_ML_DEFAULT = 40;
/** Measured use ÷ planned use, until levels have been read. Common practice 2 to 5, no source. */
export const WASTE_FACTOR_DEFAULT = 3;

/** Room for the last digit of a computed turn count, so that 18.000000000000004 turns take 9 applications, not 10. */
const TURN_SLACK = 1e-9;

/** What is done to the end: cone or not, and forward cutting turns of thread (0 for none). */
export interface FluidCut {
  readonly cone: boolean;
  readonly turns: number;
}

/**
 * Planned drops of cutting fluid on one end: 10 for the cone, and 3 × ⌈turns ÷ 2⌉ for the thread.
 * Domain: turns ≥ 0. Source: common practice, no source.
 * @example plannedDropsPerEnd({ cone: true, turns: 10.5 }) // => 28
 */
export function plannedDropsPerEnd({ cone, turns }: FluidCut): number {
  invariant(turns >= 0 && Number.isFinite(turns), 'plannedDropsPerEnd requires turns of 0 or more');
  const applications = Math.ceil(Math.max(0, turns / 2 - TURN_SLACK));
  return (cone ? CONE_DROPS : 0) + DROPS_PER_SECOND_TURN * applications;
}

/**
 * Planned fluid on one end, mL: drops ÷ drops per mL. The plan counts what lands on the work, nothing spilt.
 * Domain: drops per mL above 0.
 * @example plannedMlPerEnd({ cone: true, turns: 10.5, dropsPerMl: 40 }) // => 0.7
 */
export function plannedMlPerEnd(cut: FluidCut & { readonly dropsPerMl?: number | undefined }): number {
  const dropsPerMl = cut.dropsPerMl ?? DROPS_PER_ML_DEFAULT;
  invariant(dropsPerMl > 0 && Number.isFinite(dropsPerMl), 'plannedMlPerEnd requires drops per mL above 0');
  return plannedDropsPerEnd(cut) / dropsPerMl;
}

/**
 * Expected draw on the bottle for one end, mL: planned mL × waste factor (measured ÷ planned use).
 * Domain: waste factor above 0. Defaults 40 drops per mL and factor 3, both for the shop to replace.
 * @example expectedMlPerEnd({ cone: true, turns: 10.5, wasteFactor: 2 }) // => 1.4
 */
export function expectedMlPerEnd(
  cut: FluidCut & { readonly dropsPerMl?: number | undefined; readonly wasteFactor?: number | undefined },
): number {
  const wasteFactor = cut.wasteFactor ?? WASTE_FACTOR_DEFAULT;
  invariant(
    wasteFactor > 0 && Number.isFinite(wasteFactor),
    'expectedMlPerEnd requires a waste factor above 0',
  );
  return plannedMlPerEnd(cut) * wasteFactor;
}
