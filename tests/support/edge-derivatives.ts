import { expect } from 'vitest';
import type { EdgeTerms, LifeEvidence } from '@/lib/life/edge-terms';

export const MEDIAN = 1300;

/** Shapes, ages in medians, and how long the last row was against the age. */
export const POINTS = [0.6, 1, 2.2, 6].flatMap((shape) =>
  [0.2, 1, 1.6].flatMap((share) => [1e-4, 0.05, 0.8, 30].map((ratio) => ({ shape, share, ratio }))),
);

/** What may be known of a life, and whether an interval begins at zero. */
export const KINDS: [LifeEvidence, boolean][] = [
  ['beyond', false],
  ['exactly', false],
  ['between', false],
  ['between', true],
];

/** Central differences of value and gradient; steps of 1e-5, so about 1e-9 relative. */
export function expectRightDerivatives(
  terms: (figures: readonly number[]) => EdgeTerms,
  figures: readonly number[],
): void {
  const here = terms(figures);
  for (let a = 0; a < 4; a++) {
    const shifted = (step: number) => terms(figures.map((value, i) => (i === a ? value + step : value)));
    const [up, down] = [shifted(1e-5), shifted(-1e-5)];
    const size = 1 + Math.abs(here.value) + Math.abs(here.gradient[a] ?? 0);
    expect(Math.abs((up.value - down.value) / 2e-5 - (here.gradient[a] ?? 0))).toBeLessThan(1e-7 * size);
    for (let b = 0; b < 4; b++) {
      const slope = ((up.gradient[b] ?? 0) - (down.gradient[b] ?? 0)) / 2e-5;
      const bend = here.hessian[a * 4 + b] ?? 0;
      expect(Math.abs(slope - bend)).toBeLessThan(1e-7 * (size + Math.abs(bend)));
    }
  }
}
