import { type ConeShape, coneVolumeMm3 } from '../cone/geometry';
import { invariant } from '../invariant';
import type { CutOperation } from '../shop/vocabulary';
import { turnsPerEnd } from '../thread/pitch';

/** The figures of a connection that decide what one end costs an edge. Lengths mm, angle included, degrees. */
export interface CutConnection extends ConeShape {
  readonly tpi: number;
  readonly threadLengthMm: number;
}

/** What one end costs an edge: forward cutting turns for a die, mm³ of metal for a blade. Never added to each other. */
export type EndExposure =
  | { readonly op: 'thread'; readonly turns: number }
  | { readonly op: 'cone'; readonly mm3: number };

/**
 * Base exposure of one end, before any factor for material, dry cutting or recutting.
 * Thread: turns = length × TPI ÷ 25.4, length being the one logged (`lengthMm`) or else the connection's own.
 * Cone: mm³ removed; `lengthMm` has no meaning for a cone and must be absent.
 *
 * Counting ends alone misstates wear. The same die cuts the short medium-pressure thread and the long high-pressure
 * one: 9 turns against 16.9 at 9/16, a factor of 1.9; and a 9/16 high-pressure cone costs a blade about three medium
 * ones. Turns backed off to break the chip, and turns run off, cut nothing and count nothing.
 * Domain: length above 0; a cone that `checkConeShape` accepts. Source: geometry; common practice for the turn count.
 */
export function baseExposurePerEnd(cut: {
  readonly op: CutOperation;
  readonly connection: CutConnection;
  readonly lengthMm?: number | undefined;
}): EndExposure {
  const { op, connection, lengthMm } = cut;
  if (op === 'cone') {
    invariant(lengthMm === undefined, 'baseExposurePerEnd takes no thread length for a cone');
    return { op, mm3: coneVolumeMm3(connection) };
  }
  const cutLengthMm = lengthMm ?? connection.threadLengthMm;
  invariant(cutLengthMm > 0, 'baseExposurePerEnd requires a thread length above 0');
  return { op, turns: turnsPerEnd({ lengthMm: cutLengthMm, tpi: connection.tpi }) };
}

/**
 * The bare figure of an exposure, in the unit of its operation: turns or mm³. For sums within one kind of edge.
 * @example exposureAmount({ op: 'thread', turns: 9 }) // => 9
 */
export function exposureAmount(exposure: EndExposure): number {
  return exposure.op === 'thread' ? exposure.turns : exposure.mm3;
}
