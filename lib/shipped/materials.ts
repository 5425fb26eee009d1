import { invariant } from '../invariant';
import type { Material } from '../shop/noun';

/**
 * Give or take a factor, from the range in which a wear factor is said to lie: the range is taken as the band from 10
 * to 90 %, symmetric in proportion, so g = √(high ÷ low). The stated typical factor stays the middle, even where the
 * range is not quite even about it. Domain: 0 < low ≤ high. Source: formula, for a log-normal belief.
 * @example giveOrTakeOfRange(2, 8) // => 2
 */
export function giveOrTakeOfRange(low: number, high: number): number {
  invariant(low > 0 && high >= low, 'a range of wear factors runs from above zero upwards');
  return Math.sqrt(high / low);
}

/** Factor, and the range in which it is said to lie. Cold-worked 316 counts 1. Common practice, no source. */
type Line = readonly [
  id: string,
  name: string,
  condition: string,
  factor: number,
  range: readonly [low: number, high: number],
];

const LINES: readonly Line[] = [
  ['316-cw', '316', 'cold-worked', 1, [1, 1]],
  ['316-annealed', '316/316L', 'annealed', 0.8, [0.6, 1]],
  ['304-annealed', '304', 'annealed', 0.8, [0.6, 1]],
  ['2507', '2507 super duplex', 'annealed', 2.5, [1.5, 4]],
  ['625', 'Alloy 625', 'annealed', 4, [2.5, 8]],
  ['c-276', 'C-276', 'annealed', 4, [2.5, 8]],
  ['ti-2', 'Titanium grade 2', 'annealed', 1.5, [1, 3]],
];

/** The material against which wear is counted: an edge's life is in ends of this one. */
export const REFERENCE_MATERIAL_ID = '316-cw';

/** Titanium, which usual threading oils must not touch unless the fluid's own sheet permits it. */
export const TITANIUM_ID = 'ti-2';

/**
 * The tube materials that a new shop is shown, with first-guess wear factors to be overwritten by the shop's own log.
 * Condition and heat matter as much as the grade: two heats of one grade can differ by a factor of two.
 */
export const SHIPPED_MATERIALS: readonly Material[] = LINES.map(([id, name, condition, factor, range]) => ({
  id,
  name,
  condition,
  factor,
  factorGiveOrTake: giveOrTakeOfRange(...range),
  isReference: id === REFERENCE_MATERIAL_ID,
}));
