import { invariant } from '../invariant';
import { pitchMm, turnsPerEnd } from './pitch';

/**
 * Length that a tooth travels in one turn at a given diameter: √((π·d)² + P²). Take the pitch diameter for a mean,
 * the major diameter for the tooth's tip path. Symbols: d, mm; P, pitch, mm, from n threads per inch. Domain: d > 0.
 * Source: the helix unrolled into a right-angled triangle.
 */
export function helixLengthPerTurnMm(turn: { readonly diameterMm: number; readonly tpi: number }): number {
  invariant(turn.diameterMm > 0, 'helixLengthPerTurnMm requires a diameter above 0');
  return Math.hypot(Math.PI * turn.diameterMm, pitchMm(turn.tpi));
}

/**
 * Path of one die tooth over a whole threaded end, at the tube's outside diameter: turns × helix length per turn, in
 * metres. For comparing sizes; wear is kept in turns. Domain: diameter and length above 0.
 */
export function toothPathPerEndM(end: {
  readonly odMm: number;
  readonly tpi: number;
  readonly lengthMm: number;
}): number {
  const perTurnMm = helixLengthPerTurnMm({ diameterMm: end.odMm, tpi: end.tpi });
  return (turnsPerEnd(end) * perTurnMm) / 1000;
}
