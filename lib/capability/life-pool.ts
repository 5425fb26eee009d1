import type { Pool } from './share-supply';

/** Lives of like pieces, and for lines that they come too late for, when they come: in whole days from today. */
export interface LifePool extends Pool {
  readonly lateInDays: ReadonlyMap<number, LateInDays>;
}

/** One figure for every draw, or one for each. */
export type LateInDays = number | ArrayLike<number>;
