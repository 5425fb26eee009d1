import type { Connection } from './noun';
import type { Part } from './part';

/**
 * The row of the size table whose thread a part cuts or gauges: the first that it fits, where all that it fits have one size, pitch
 * and hand. Undefined where it fits none, or threads that differ.
 */
export function threadOfPart(
  part: Pick<Part, 'fitsConnectionIds'>,
  connections: readonly Connection[],
): Connection | undefined {
  const fits = connections.filter(({ id }) => part.fitsConnectionIds.includes(id));
  const [first] = fits;
  if (first === undefined) return undefined;
  const same = fits.every(
    ({ odNum, odDen, tpi, hand }) =>
      odNum === first.odNum && odDen === first.odDen && tpi === first.tpi && hand === first.hand,
  );
  return same ? first : undefined;
}
