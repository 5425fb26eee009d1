import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { learnUseRatio, PRIOR_PLANNED_ML, ratioDraws, ratioQuantile } from '@/lib/fluid/use-ratio';

const volume = fc.double({ min: 0, max: 5000, noNaN: true });
const use = fc.record({ plannedMl: volume, measuredMl: volume });

describe('learnUseRatio', () => {
  // source: identity. With nothing read, what the shop says is all there is.
  it('is the shop’s factor where no level was read', () => {
    for (const factor of [1, 2.5, 3, 5]) expect(learnUseRatio(factor, []).mean).toBeCloseTo(factor, 12);
  });

  // source: hand. (3 × 160 + 400) ÷ (160 + 100) = 880 ÷ 260.
  it('weighs the shop’s factor as 160 mL of planned use', () => {
    expect(PRIOR_PLANNED_ML).toBe(160);
    expect(learnUseRatio(3, [{ plannedMl: 100, measuredMl: 400 }]).mean).toBeCloseTo(880 / 260, 12);
  });

  // source: other-software. SciPy 1 scipy.stats.invgamma.ppf([0.1, 0.5, 0.9], shape, scale=scale).
  it.each([
    [3, [], [1.8469051755160901, 2.768500997360632, 4.4178814753513205]],
    [3, [{ plannedMl: 100, measuredMl: 400 }], [2.320924669477881, 3.219171135871869, 4.646437184334448]],
    [
      2.5,
      [
        { plannedMl: 400, measuredMl: 900 },
        { plannedMl: 50, measuredMl: 300 },
      ],
      [2.0579999743797, 2.566792675028311, 3.2579565265784054],
    ],
  ])('quantiles as SciPy has them: factor %d, %o', (factor, uses, quantiles) => {
    const ratio = learnUseRatio(factor, uses);
    for (const [i, p] of [0.1, 0.5, 0.9].entries())
      expect(ratioQuantile(ratio, p)).toBeCloseTo(quantiles[i] as number, 9);
  });

  // source: published. Common practice: real use is two to five times the drop count; the belief before any reading covers it.
  it('believes two to five times before any reading', () => {
    const before = learnUseRatio(3, []);
    expect(Math.abs(ratioQuantile(before, 0.1) - 2)).toBeLessThan(0.3);
    expect(Math.abs(ratioQuantile(before, 0.9) - 5)).toBeLessThan(0.7);
  });

  // source: identity. Volumes add up, so one reading more in between changes nothing, nor does the order.
  it('does not depend on the order of readings, nor on how often a level is read', () => {
    fc.assert(
      fc.property(use, fc.double({ min: 0, max: 1, noNaN: true }), use, (one, share, other) => {
        const parts = [
          { plannedMl: one.plannedMl * share, measuredMl: one.measuredMl * share },
          { plannedMl: one.plannedMl * (1 - share), measuredMl: one.measuredMl * (1 - share) },
        ];
        const whole = learnUseRatio(3, [one, other]);
        expect(learnUseRatio(3, [other, ...parts]).mean / whole.mean).toBeCloseTo(1, 9);
      }),
    );
  });

  // source: identity. A mean of the factor and the plain ratio, weighted, lies between them; more measured means more.
  it('lies between the shop’s factor and the plain ratio, and rises with what was measured', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 8, noNaN: true }),
        volume,
        volume,
        (factor, plannedMl, measuredMl) => {
          fc.pre(plannedMl > 1);
          const { mean } = learnUseRatio(factor, [{ plannedMl, measuredMl }]);
          const plain = measuredMl / plannedMl;
          expect(mean).toBeGreaterThanOrEqual(Math.min(factor, plain) - 1e-9);
          expect(mean).toBeLessThanOrEqual(Math.max(factor, plain) + 1e-9);
          const more = learnUseRatio(factor, [{ plannedMl, measuredMl: measuredMl + 1 }]).mean;
          expect(more).toBeGreaterThan(mean);
        },
      ),
    );
  });

  // source: formula. Levels drawn from a known ratio of 4: 30 bottles of about 60 mL planned bring the estimate to it.
  it('finds a ratio of four from what was read', () => {
    const uses = Array.from({ length: 30 }, (_, i) => ({
      plannedMl: 60,
      measuredMl: 240 + (i % 2 ? 40 : -40),
    }));
    expect(Math.abs(learnUseRatio(3, uses).mean - 4)).toBeLessThan(0.1);
  });
});

describe('ratioDraws', () => {
  // source: formula. Mean of an inverse gamma law is scale ÷ (shape − 1).
  it('rise, and their mean is that of the law', () => {
    const ratio = learnUseRatio(3, []);
    const draws = ratioDraws(ratio, 4000);
    expect([...draws].every((draw, i) => i === 0 || draw > (draws[i - 1] as number))).toBe(true);
    const mean = draws.reduce((sum, draw) => sum + draw, 0) / draws.length;
    expect(Math.abs(mean - ratio.mean)).toBeLessThan(0.01);
  });

  it('takes no empty count', () => {
    expect(() => ratioDraws(learnUseRatio(3, []), 0)).toThrow();
    expect(() => ratioQuantile(learnUseRatio(3, []), 1)).toThrow();
    expect(() => learnUseRatio(0, [])).toThrow();
  });
});
