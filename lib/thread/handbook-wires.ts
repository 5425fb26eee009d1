import { invariant } from '../invariant';

/** A thread and its wires as the old handbook tables take them: inches. */
interface HandbookThread {
  /** D, outside diameter. */
  readonly majorIn: number;
  readonly tpi: number;
  readonly wireIn: number;
}

/**
 * Measurement over wires of a sharp V thread of basic size, in: M = D − √3 ÷ n + 3·W (the tables print 1.732). Domain: all above 0.
 * Source: published. Handbook table of dimensions over wires, V column.
 */
export function overWiresSharpVIn(thread: HandbookThread): number {
  return basicOverWiresIn(thread, Math.sqrt(3));
}

/**
 * The same for a thread with flats of P ÷ 8 (US standard, the basic form of unified threads): M = D − 1.5155 ÷ n + 3·W.
 * Source: published. Handbook table of dimensions over wires, US column.
 */
export function overWiresFlatIn(thread: HandbookThread): number {
  return basicOverWiresIn(thread, 1.5155);
}

function basicOverWiresIn({ majorIn, tpi, wireIn }: HandbookThread, depthInPitches: number): number {
  invariant(majorIn > 0 && tpi > 0 && wireIn > 0, 'dimensions over wires require figures above 0');
  return majorIn - depthInPitches / tpi + 3 * wireIn;
}
