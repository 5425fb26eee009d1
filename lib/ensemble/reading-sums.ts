import { invariant } from '../invariant';
import type { ReadingSum } from '../reading/fused-residual';
import type { WornReading } from '../reading/reading';
import { exposureDraws, type KindDraws } from './kind-draws';

/** q: a reading is taken to grow in step with the share of life used up. METHODS' default; no shop has said otherwise yet. */
const POWER = 1;

/** The readings of an edge in every draw; undefined where none of them says anything (nothing seen, or nothing cut). */
export interface ReadingDraws {
  sumAt(k: number): ReadingSum;
}

/**
 * Adds up an edge's readings in each draw: Σ X^(2q)/σ² and Σ w·X^q/σ², X the exposure at the reading in that draw. The order
 * of the readings does not matter, to the last bit. Errors: throws on a spread that is not above zero (a bug).
 */
export function readingDraws(draws: KindDraws, readings: readonly WornReading[]): ReadingDraws | undefined {
  const telling = readings.filter(({ exposure }) => exposure.some(({ base }) => base > 0));
  if (telling.length === 0) return undefined;
  const square = new Float64Array(draws.drawCount);
  const linear = new Float64Array(draws.drawCount);
  const seen = telling.map(({ worn, sd, exposure }) => {
    invariant(sd > 0 && Number.isFinite(worn), 'a reading has a spread above zero');
    return { worn: Math.min(1, Math.max(0, worn)), sd, exposure: exposureDraws(draws, exposure) };
  });
  seen.sort(
    (a, b) => a.worn - b.worn || a.sd - b.sd || (a.exposure[0] as number) - (b.exposure[0] as number),
  );
  for (const { worn, sd, exposure } of seen) {
    for (let k = 0; k < exposure.length; k++) {
      const reach = (exposure[k] as number) ** POWER / sd;
      square[k] = (square[k] as number) + reach * reach;
      linear[k] = (linear[k] as number) + (worn / sd) * reach;
    }
  }
  return { sumAt: (k) => ({ square: square[k] as number, linear: linear[k] as number, power: POWER }) };
}
