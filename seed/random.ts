import { invariant } from '../lib/invariant';
import { normalQuantile } from '../lib/numeric/normal';
import { streamOfKey } from '../lib/numeric/random-stream';

/** Repeatable chance for invented data: the same key always deals the same hand. */
export interface Chance {
  /** Whole number from `min` to `max`, both included. */
  int(min: number, max: number): number;
  /** One of a list. */
  pick<T>(list: readonly T[]): T;
  /** Normally distributed figure. */
  normal(mean: number, sd: number): number;
}

/** Chance named by a key; two keys have nothing to do with each other. */
export function chanceOf(key: string): Chance {
  const uniform = streamOfKey(key);
  const int = (min: number, max: number) => min + Math.floor(uniform() * (max - min + 1));
  return {
    int,
    pick: (list) => {
      const picked = list[int(0, list.length - 1)];
      invariant(picked !== undefined, 'chance picks from a list that is not empty');
      return picked;
    },
    normal: (mean, sd) => mean + sd * normalQuantile(uniform()),
  };
}
