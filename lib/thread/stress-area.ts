import { invariant } from '../invariant';

/**
 * Tensile stress area of a unified thread, in²: As = (π/4)·(D − 0.9743 ÷ n)². Symbols: D, basic major diameter, in; n, threads
 * per inch. For comparing threads; never a rating of a joint. Domain: D > 0.9743 ÷ n. Source: published. ASME B1.1.
 */
export function tensileStressAreaIn2({
  majorIn,
  tpi,
}: {
  readonly majorIn: number;
  readonly tpi: number;
}): number {
  const diameterIn = majorIn - 0.9743 / tpi;
  invariant(
    tpi > 0 && diameterIn > 0,
    'tensileStressAreaIn2 requires a diameter larger than the thread is deep',
  );
  return (Math.PI / 4) * diameterIn ** 2;
}
