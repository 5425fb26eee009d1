import { invariant } from '../invariant';
import { MM_PER_IN } from '../units/inch-mm';

/**
 * Thread pitch in inches: P = 1 ÷ n, n = threads per inch (TPI). Domain: n > 0.
 * @example pitchIn(16) // => 0.0625
 */
export function pitchIn(tpi: number): number {
  invariant(tpi > 0 && Number.isFinite(tpi), 'pitchIn requires threads per inch above 0');
  return 1 / tpi;
}

/**
 * Thread pitch in millimetres: P = 25.4 ÷ n. Domain: n > 0.
 * @example pitchMm(20) // => 1.27
 */
export function pitchMm(tpi: number): number {
  invariant(tpi > 0 && Number.isFinite(tpi), 'pitchMm requires threads per inch above 0');
  return MM_PER_IN / tpi;
}

/**
 * Forward cutting turns of one threaded end, the trade's own count of die wear: turns = length × n ÷ 25.4.
 * Turns backed off to break the chip, and turns run off, cut nothing and are not in it.
 * Symbols: length of thread, mm; n, threads per inch. Domain: length ≥ 0, n > 0. Source: the definition of pitch.
 * @example turnsPerEnd({ lengthMm: 12.7, tpi: 18 }) // => 9
 */
export function turnsPerEnd({ lengthMm, tpi }: { readonly lengthMm: number; readonly tpi: number }): number {
  invariant(lengthMm >= 0 && Number.isFinite(lengthMm), 'turnsPerEnd requires a length of 0 or more');
  invariant(tpi > 0 && Number.isFinite(tpi), 'turnsPerEnd requires threads per inch above 0');
  return (lengthMm * tpi) / MM_PER_IN;
}
