import fc from 'fast-check';
import { expect, it } from 'vitest';
import { DROPS_PER_ML_RANGE, dropsPerMl, dropsPerMlByMass, tateDropMl } from '@/lib/fluid/drops-per-ml';

// source: published. The official dropper delivers 1 mL of water in 20 drops, give or take 2 (USP/NF); UCUM counts 20 drops a mL.
it('the official dropper: 20 drops of water to the millilitre', () => {
  expect(dropsPerMl({ drops: 20, volumeMl: 1 })).toBe(20);
  for (const drops of [18, 22])
    expect(Math.abs(dropsPerMl({ drops, volumeMl: 1 }) - 20)).toBeLessThanOrEqual(2);
});

// source: published. USP <1101>: a drop of water from the medicine dropper weighs 45 to 55 mg; water at 1 g/mL.
it('drops of 45 to 55 mg of water are 18.2 to 22.2 to the millilitre', () => {
  const of = (massG: number) => dropsPerMlByMass({ drops: 1, massG, densityGPerMl: 1 });
  expect(of(0.045)).toBeCloseTo(1000 / 45, 12);
  expect(of(0.05)).toBeCloseTo(20, 12);
  expect(of(0.055)).toBeCloseTo(1000 / 55, 12);
});

// source: formula. Tate's law by hand for a 1 mm tip, 32 mN/m, 0.9 g/mL: 2π·0.001·0.032 N ÷ (900 × 9.80665 N/m³) = 22.78 µL.
it('Tate: drop of an oil from a 1 mm tip', () => {
  const oil = { surfaceTensionMnPerM: 32, densityGPerMl: 0.9 };
  const litre = (2 * Math.PI * 0.001 * 0.032) / (900 * 9.80665);
  expect(tateDropMl({ ...oil, tipRadiusMm: 1 })).toBeCloseTo(litre * 1e6, 12);
  expect(Math.round(tateDropMl({ ...oil, tipRadiusMm: 1 }) * 1e4)).toBe(228);
});

// source: published. Oils give 34 to 68 drops to the millilitre from tips of 2 and 1 mm radius (Tate's law with the falling share).
it('Tate: oils give 34 to 68 drops to the millilitre from 2 and 1 mm tips', () => {
  const oil = { surfaceTensionMnPerM: 32, densityGPerMl: 0.9, fallingShare: 0.65 };
  expect(Math.abs(1 / tateDropMl({ ...oil, tipRadiusMm: 1 }) - 68)).toBeLessThan(1);
  expect(Math.abs(1 / tateDropMl({ ...oil, tipRadiusMm: 2 }) - 34)).toBeLessThan(1);
});

// source: identity. Twice the drops in twice the volume is the same dropper; both kinds of count agree.
it('does not depend on how long one counts, nor on scale or measure', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 500 }),
      fc.double({ min: 0.1, max: 50, noNaN: true }),
      fc.double({ min: 0.7, max: 1.3, noNaN: true }),
      (drops, volumeMl, densityGPerMl) => {
        const once = dropsPerMl({ drops, volumeMl });
        expect(dropsPerMl({ drops: 2 * drops, volumeMl: 2 * volumeMl })).toBeCloseTo(once, 9);
        const massG = volumeMl * densityGPerMl;
        expect(dropsPerMlByMass({ drops, massG, densityGPerMl }) / once).toBeCloseTo(1, 9);
      },
    ),
  );
});

it('takes no empty count', () => {
  expect(() => dropsPerMl({ drops: 0, volumeMl: 1 })).toThrow();
  expect(() => dropsPerMlByMass({ drops: 1, massG: 0, densityGPerMl: 1 })).toThrow();
  expect(() => tateDropMl({ tipRadiusMm: 0, surfaceTensionMnPerM: 1, densityGPerMl: 1 })).toThrow();
  // source: published. Water 20, oils 34 to 68: all of them lie inside what is taken for a dropper.
  for (const usual of [18, 20, 34, 68]) {
    expect(usual > DROPS_PER_ML_RANGE.low && usual < DROPS_PER_ML_RANGE.high).toBe(true);
  }
});
