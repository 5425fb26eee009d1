import { invariant } from '../invariant';

/** Sizes in which neat oils are sold, mL, small to large. Common practice, no source. */
export const CONTAINER_SIZES_ML = [100, 250, 500, 1000, 2000, 5000, 20_000] as const;

/**
 * Months that a container lasts at a pace, 30 days to the month.
 * Domain: both above 0.
 * @example monthsOfContainer({ containerMl: 5000, mlPerDay: 5 }) // => 33.333333333333336
 */
export function monthsOfContainer({
  containerMl,
  mlPerDay,
}: {
  containerMl: number;
  mlPerDay: number;
}): number {
  invariant(containerMl > 0 && mlPerDay > 0, 'monthsOfContainer requires figures above 0');
  return containerMl / mlPerDay / 30;
}

/**
 * The largest container on sale that is used up within its life at the shop's pace; null where even the smallest is not.
 * For the warning that a can will expire before it is used. Domain: pace above 0, life in days of 0 or more.
 * @example containerUsedInTime({ mlPerDay: 5, lifeDays: 365 }) // => 1000
 */
export function containerUsedInTime({
  mlPerDay,
  lifeDays,
}: {
  mlPerDay: number;
  lifeDays: number;
}): number | null {
  invariant(mlPerDay > 0 && lifeDays >= 0, 'containerUsedInTime requires a pace above 0');
  return CONTAINER_SIZES_ML.findLast((sizeMl) => sizeMl <= mlPerDay * lifeDays) ?? null;
}

/**
 * How many containers to buy for a want, capped by what is used up within their life: at least one.
 * Domain: container above 0, the others 0 or more. Life null: they keep.
 * @example containersToBuy({ wantMl: 2600, containerMl: 1000, mlPerDay: 5, lifeDays: 365 }) // => 1
 */
export function containersToBuy(order: {
  wantMl: number;
  containerMl: number;
  mlPerDay: number;
  lifeDays: number | null;
}): number {
  const { wantMl, containerMl, mlPerDay, lifeDays } = order;
  invariant(containerMl > 0 && wantMl >= 0 && mlPerDay >= 0, 'containersToBuy requires a container above 0');
  const wanted = Math.ceil(wantMl / containerMl - 1e-9);
  const used = lifeDays === null ? wanted : Math.floor((mlPerDay * lifeDays) / containerMl + 1e-9);
  return Math.max(1, Math.min(wanted, used));
}
