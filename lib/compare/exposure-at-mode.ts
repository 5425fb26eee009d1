import { parametersOf } from '../life/exposure-sum';
import type { LifeFit } from '../life/life-fit';
import { cellsOf, type ExposurePart } from '../life/observation';

/** Reference exposure of so much cutting at the most probable wear factors; an unknown material counts as the reference. */
export function exposureAtMode(fit: LifeFit, parts: readonly ExposurePart[]): number {
  return cellsOf(parts).reduce((sum, cell) => {
    const log = parametersOf(cell, fit.layout).reduce(
      (total, index) => total + (fit.theta[index] as number),
      0,
    );
    return sum + cell.base * Math.exp(log);
  }, 0);
}
