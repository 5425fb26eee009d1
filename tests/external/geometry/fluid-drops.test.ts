import { describe, expect, it } from 'vitest';
import { DROPS_PER_ML_DEFAULT, plannedDropsPerEnd, plannedMlPerEnd } from '@/lib/fluid';

// source: published. USP <1101> medicine dropper: a drop of water weighs 45 to 55 mg (check value M.drop.usp).
// Water at 1 g/mL: at 20 drops per mL ten cone drops must weigh 10 × 45 to 10 × 55 mg.
it('ten drops of water at 20 per mL weigh what the dropper standard allows', () => {
  const massMg = plannedMlPerEnd({ cone: true, turns: 0, dropsPerMl: 20 }) * 1000;
  expect(massMg).toBeGreaterThanOrEqual(450);
  expect(massMg).toBeLessThanOrEqual(550);
});

// source: published. Official dropper of USP/NF: 1 mL of water in 20 drops, ± 2 (check value M.drop.20).
it('twenty drops of water are a millilitre, within the dropper’s two drops', () => {
  // 10 for the cone and 3 at each of ⌈4/2⌉ = 2 applications make 16; 3 × ⌈6/2⌉ = 9 and 10 make 19 drops.
  const perDropMl = plannedMlPerEnd({ cone: true, turns: 6, dropsPerMl: 20 }) / 19;
  expect(1 / perDropMl).toBeGreaterThanOrEqual(18);
  expect(1 / perDropMl).toBeLessThanOrEqual(22);
});

describe('the trade sheet’s worked figures', () => {
  // source: hand. Worked figures of the trade sheet, common practice, no source: 3/8 medium 28 drops = 0.7 mL at 40 per mL and
  // 1.4 mL at 20; 9/16 high 37 drops = 0.9 mL (rounded). By hand: 10 + 3 × ⌈10.5/2⌉ = 28; 10 + 3 × ⌈16.875/2⌉ = 37; 37/40 = 0.925.
  it('drops and millilitres per end', () => {
    expect(plannedDropsPerEnd({ cone: true, turns: 10.5 })).toBe(28);
    expect(plannedMlPerEnd({ cone: true, turns: 10.5 })).toBeCloseTo(0.7, 12);
    expect(plannedMlPerEnd({ cone: true, turns: 10.5, dropsPerMl: 20 })).toBeCloseTo(1.4, 12);
    expect(plannedDropsPerEnd({ cone: true, turns: 16.875 })).toBe(37);
    expect(Math.abs(plannedMlPerEnd({ cone: true, turns: 16.875 }) - 0.9)).toBeLessThanOrEqual(0.05);
  });

  // source: formula. Tate's law, m·g = 2π·r·γ, for an oil of surface tension 0.030 N/m and 880 kg/m³ (typical, from memory):
  // volume = 2π × 0.030 × r / (880 × 9.80665). At r = 2 mm 0.0437 mL, at 1 mm 0.0218 mL: 22.9 to 45.8 drops per mL.
  // About two thirds of the hanging drop falls (from memory), so 34 to 68, the range that the trade sheet prints.
  it('the default of 40 drops per mL lies among oil drops, above water’s 22', () => {
    const dropsPerMl = (tipMm: number) => (880 * 9.80665) / (2 * Math.PI * 0.03 * (tipMm / 1000)) / 1e6;
    expect(DROPS_PER_ML_DEFAULT).toBeGreaterThan(22);
    expect(DROPS_PER_ML_DEFAULT).toBeLessThan(dropsPerMl(1) / 0.67);
    expect(DROPS_PER_ML_DEFAULT).toBeGreaterThan(dropsPerMl(2) / 0.67);
  });
});
