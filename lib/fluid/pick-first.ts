import type { Day } from '../calendar/day';
import { compareText } from '../text/compare-text';
import { type FluidObjection, type FluidPermit, type FluidWork, fluidObjection } from './permit-fluid';
import { type BottleDays, bottleUseBy, isOverLife, type UseBy } from './use-by';

/** A bottle or can as the pick sees it. */
export interface Bottle extends BottleDays, FluidPermit {
  readonly toolId: string;
  readonly state: 'in-crib' | 'issued' | 'quarantined' | string;
  /** What is left; null where nobody has read it. */
  readonly levelMl: number | null;
}

/** Why a bottle is not to be used now. */
export type BottleBar =
  | { readonly why: FluidObjection }
  | { readonly why: 'over-life'; readonly useBy: UseBy }
  | { readonly why: 'set-aside' | 'empty' };

export interface BottleStanding<B extends Bottle> {
  readonly bottle: B;
  readonly useBy: UseBy;
  readonly bar: BottleBar | null;
}

/**
 * Where a bottle stands for the work on a day. For oxygen only the days on the label count: an extended life does not.
 */
export function bottleStanding<B extends Bottle>(bottle: B, work: FluidWork, today: Day): BottleStanding<B> {
  const ends = bottleUseBy(bottle, { asLabelled: work.duty === 'oxygen' });
  const why = fluidObjection(bottle, work);
  if (bottle.state !== 'in-crib' && bottle.state !== 'issued')
    return { bottle, useBy: ends, bar: { why: 'set-aside' } };
  if (why !== null) return { bottle, useBy: ends, bar: { why } };
  if (isOverLife(ends, today)) return { bottle, useBy: ends, bar: { why: 'over-life', useBy: ends } };
  if (bottle.levelMl === 0) return { bottle, useBy: ends, bar: { why: 'empty' } };
  return { bottle, useBy: ends, bar: null };
}

/**
 * First expired, first out: the bottles that may be used on the work, the one to use first at the front. Earliest use-by day
 * first; a bottle without a day last; among equals the opened before the closed, then the emptier, then by ID.
 */
export function pickFirst<B extends Bottle>(
  bottles: readonly B[],
  work: FluidWork,
  today: Day,
): BottleStanding<B>[] {
  return bottles
    .map((bottle) => bottleStanding(bottle, work, today))
    .filter(({ bar }) => bar === null)
    .sort(compareFirst);
}

/** The order of first expired, first out. */
export function compareFirst<B extends Bottle>(a: BottleStanding<B>, b: BottleStanding<B>): number {
  const day = compareText(a.useBy.onDay ?? '9999', b.useBy.onDay ?? '9999');
  if (day !== 0) return day;
  const opened = Number(b.bottle.openedOnDay !== null) - Number(a.bottle.openedOnDay !== null);
  if (opened !== 0) return opened;
  const level = (a.bottle.levelMl ?? Infinity) - (b.bottle.levelMl ?? Infinity);
  if (level < 0 || level > 0) return level;
  return compareText(a.bottle.toolId, b.bottle.toolId);
}
