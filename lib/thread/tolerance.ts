import { type Fixed, fixedOf, overFixed, rootFixed, timesFixed } from '../numeric/fixed-decimal';

/** What the tolerance formulas take: basic major diameter and length of engagement in inches, and threads per inch. */
export interface ToleranceBasis {
  readonly basicMajor: Fixed;
  readonly engagement: Fixed;
  readonly tpi: Fixed;
}

/**
 * Pitch-diameter tolerance of class 2A, in, unrounded; every other class is a multiple of it:
 * Td₂ = 0.0015·∛D + 0.0015·√LE + 0.015·∛P². Symbols: D, basic major diameter; LE, length of engagement; P = 1 ÷ n, all in
 * inches. Source: published. ASME B1.1, formulas.
 */
export function pitchTolerance2A({ basicMajor, engagement, tpi }: ToleranceBasis): Fixed {
  return (
    timesFixed(fixedOf(0.0015), rootFixed(basicMajor, 3)) +
    timesFixed(fixedOf(0.0015), rootFixed(engagement, 2)) +
    timesFixed(fixedOf(0.015), pitchTwoThirds(tpi))
  );
}

/** ∛P², in^(2/3), for P = 1 ÷ n. */
export function pitchTwoThirds(tpi: Fixed): Fixed {
  const pitch = overFixed(fixedOf(1), tpi);
  return rootFixed(timesFixed(pitch, pitch), 3);
}
