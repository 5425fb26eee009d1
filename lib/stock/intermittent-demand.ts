import { invariant } from '../invariant';

/** What is left of a series of demand with gaps: size of a demand, how often one comes, and units a period. */
export interface IntermittentForecast {
  /** Smoothed size of a demand when there is one. */
  readonly size: number;
  /** Smoothed periods between demands. */
  readonly interval: number;
  /** Units a period: size ÷ interval. */
  readonly rate: number;
  /** The same, corrected for the bias of the quotient: × (1 − smoothing/2), Syntetos and Boylan. */
  readonly rateSba: number;
  /** × (1 − smoothing/(2 − smoothing)), Shale, Boylan and Johnston. */
  readonly rateSbj: number;
}

/**
 * Croston's method: sizes and gaps of a demand that comes now and then are smoothed apart, each when a demand comes. Starts
 * with the first demand and its first gap; nothing moves after the last demand. Undefined where nothing was ever needed.
 * Domain: demand >= 0, 0 < smoothing <= 1. Source: J. D. Croston, Operational Research Quarterly 23 (1972).
 */
export function croston(demand: readonly number[], smoothing: number): IntermittentForecast | undefined {
  invariant(smoothing > 0 && smoothing <= 1, 'croston requires a smoothing above 0, at most 1');
  let size: number | undefined;
  let interval = 0;
  let gap = 0;
  for (const units of demand) {
    gap++;
    if (units === 0) continue;
    if (size === undefined) [size, interval] = [units, gap];
    else {
      size += smoothing * (units - size);
      interval += smoothing * (gap - interval);
    }
    gap = 0;
  }
  if (size === undefined) return undefined;
  const rate = size / interval;
  return {
    ...{ size, interval, rate },
    rateSba: rate * (1 - smoothing / 2),
    rateSbj: rate * (1 - smoothing / (2 - smoothing)),
  };
}

/** How the method of Teunter, Syntetos and Babai starts and how fast it follows. */
export interface TsbSettings {
  readonly sizeSmoothing: number;
  readonly chanceSmoothing: number;
  readonly startSize: number;
  /** Chance of a demand in a period. */
  readonly startChance: number;
}

/**
 * The method of Teunter, Syntetos and Babai: as Croston's, but the chance of a demand is smoothed in every period, so that
 * a size nobody cuts any more fades from the forecast. Domain: as croston; 0 <= startChance <= 1.
 * Source: R. H. Teunter, A. A. Syntetos and M. Z. Babai, European Journal of Operational Research 214 (2011).
 */
export function tsb(
  demand: readonly number[],
  { sizeSmoothing, chanceSmoothing, startSize, startChance }: TsbSettings,
): { readonly size: number; readonly chance: number; readonly rate: number } {
  let size = startSize;
  let chance = startChance;
  for (const units of demand) {
    chance += chanceSmoothing * ((units > 0 ? 1 : 0) - chance);
    if (units > 0) size += sizeSmoothing * (units - size);
  }
  return { size, chance, rate: size * chance };
}
