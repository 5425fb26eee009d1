import { invariant } from '../invariant';

/** How many new pieces of a part are needed, and when: in each draw the days, rising, on which the 1st, 2nd … is begun. */
export interface PartNeed {
  readonly partId: string;
  readonly drawCount: number;
  /** `needDays[n][k]`: days from today, Infinity where draw k needs no more than n. */
  readonly needDays: readonly Float64Array[];
}

/** Pieces needed within so many days from today, per draw. */
export function piecesWithin({ needDays, drawCount }: PartNeed, days: number): Int32Array {
  const counts = new Int32Array(drawCount);
  for (const piece of needDays)
    for (let k = 0; k < drawCount; k++)
      if ((piece[k] as number) <= days) counts[k] = (counts[k] as number) + 1;
  return counts;
}

/**
 * Chance of running out within so many days when so many pieces more are there in time, for 0, 1, … `most` pieces: the
 * share of draws that need more. Never rises with the pieces.
 */
export function stockOutBy(need: PartNeed, days: number, most: number): number[] {
  const counts = piecesWithin(need, days);
  return Array.from({ length: most + 1 }, (_, pieces) => share(counts, (count) => count > pieces));
}

/**
 * Fewest pieces that suffice in a share `service` of the draws: the order-up-to level. Domain: 0 < service < 1.
 */
export function piecesToSuffice(need: PartNeed, days: number, service: number): number {
  invariant(service > 0 && service < 1, 'piecesToSuffice requires a service level between 0 and 1');
  const counts = piecesWithin(need, days).sort();
  return rank(counts, service);
}

/** Median and 10–90 % band of the pieces needed. */
export function pieceBand(need: PartNeed, days: number): { low: number; median: number; high: number } {
  const counts = piecesWithin(need, days).sort();
  return { low: rank(counts, 0.1), median: rank(counts, 0.5), high: rank(counts, 0.9) };
}

/** The smallest figure that a share p of the sorted figures does not pass. */
function rank(sorted: ArrayLike<number>, p: number): number {
  return sorted[Math.min(sorted.length - 1, Math.max(0, Math.ceil(p * sorted.length - 1e-9) - 1))] ?? 0;
}

function share(counts: Int32Array, is: (count: number) => boolean): number {
  let sum = 0;
  for (const count of counts) if (is(count)) sum++;
  return sum / counts.length;
}
