import { describe, expect, it } from 'vitest';
import { coneHeightMm, coneVolumeMm3, seatGapMm } from '@/lib/cone/geometry';
import { threadRemovedMm3, toothPathPerEndM, turnsPerEnd } from '@/lib/thread';
import { baseExposurePerEnd, exposureAmount } from '@/lib/wear/exposure';

type Row = readonly [
  row: string,
  odIn: number,
  tpi: number,
  lengthIn: number,
  noseIn: number,
  turns: number,
  coneMm: number,
  gapMm: number,
  pathM: number,
  coneMm3: number,
  threadMm3: number,
];

/**
 * source: hand. Worked table of the trade sheet, rounded; recomputed by hand for two rows (below). Lengths and nose
 * diameters are common practice, no source, to be confirmed in the fitting maker's manual; the rest is arithmetic.
 * Columns: row, OD in, TPI, thread length in, nose in | turns, cone mm, gap mm, tooth path m, cone mm³, thread mm³.
 * Each figure is printed rounded, so ours must lie within half a unit of its last digit.
 */
const ROWS: readonly Row[] = [
  ['1/4 medium', 1 / 4, 28, 11 / 32, 0.141, 9.6, 2.4, 0.028, 0.19, 29, 44],
  ['3/8 medium', 3 / 8, 24, 7 / 16, 0.25, 10.5, 2.8, 0.032, 0.31, 59, 99],
  ['9/16 medium', 9 / 16, 18, 1 / 2, 0.406, 9.0, 3.5, 0.041, 0.4, 142, 229],
  ['3/4 medium', 3 / 4, 16, 5 / 8, 0.562, 10.0, 4.2, 0.049, 0.6, 276, 434],
  ['1 medium', 1, 14, 25 / 32, 0.719, 10.9, 6.3, 0.073, 0.87, 814, 834],
  ['1/4 high', 1 / 4, 28, 9 / 16, 0.125, 15.8, 2.8, 0.032, 0.31, 37, 71],
  ['3/8 high', 3 / 8, 24, 3 / 4, 0.219, 18.0, 3.5, 0.041, 0.54, 89, 170],
  ['9/16 high', 9 / 16, 18, 15 / 16, 0.281, 16.9, 6.3, 0.073, 0.76, 422, 430],
];

/** Room for a half that is exact on paper (15.75 printed as 15.8) and falls a last digit short in binary. */
const LAST_DIGIT = 1e-9;

const within = (value: number, printed: number, unit: number) =>
  expect(Math.abs(value - printed), `${value} against ${printed}`).toBeLessThanOrEqual(unit / 2 + LAST_DIGIT);

for (const [row, odIn, tpi, lengthIn, noseIn, turns, coneMm, gapMm, pathM, coneMm3, threadMm3] of ROWS) {
  describe(row, () => {
    const [odMm, noseMm, lengthMm] = [odIn * 25.4, noseIn * 25.4, lengthIn * 25.4];
    const cone = { odMm, noseMm, coneAngleDeg: 59 };
    const thread = { odMm, majorMm: odMm, tpi, lengthMm };

    it('turns per end', () => within(turnsPerEnd(thread), turns, 0.1));
    it('cone axial length', () => within(coneHeightMm(cone), coneMm, 0.1));
    it('gap at the large end, 59° in 60°', () => within(seatGapMm(cone), gapMm, 0.001));
    it('tooth path, at the outside diameter', () => within(toothPathPerEndM(thread), pathM, 0.01));
    it('metal cut by the cone', () => within(coneVolumeMm3(cone), coneMm3, 1));
    it('metal cut by the thread', () => within(threadRemovedMm3(thread), threadMm3, 1));
  });
}

// source: hand. Arithmetic worked with bc, 10 digits. 9/16 medium: D = 14.2875, d = 0.406 × 25.4 = 10.3124, tan 29.5° = 0.5657728, tan 30° = 0.5773503.
// h = (14.2875 − 10.3124)/(2 × 0.5657728) = 3.9751/1.1315456 = 3.51298.
// Gap = 3.51298 × (0.5773503 − 0.5657728) = 3.51298 × 0.0115775 = 0.040672.
// V: D² = 204.13266, D·d = 147.33842, d² = 106.34559; π/4 × 204.13266 × 3.51298 = 563.2204;
// π × 3.51298/12 × 457.81667 = 0.9196967 × 457.81667 = 421.0525; V = 142.1679.
it('9/16 medium pressure, recomputed by hand', () => {
  const cone = { odMm: 14.2875, noseMm: 10.3124, coneAngleDeg: 59 };
  expect(coneHeightMm(cone)).toBeCloseTo(3.51298, 4);
  expect(seatGapMm(cone)).toBeCloseTo(0.040672, 5);
  expect(Math.abs(coneVolumeMm3(cone) - 142.1679)).toBeLessThan(0.001);
  expect(turnsPerEnd({ lengthMm: 12.7, tpi: 18 })).toBeCloseTo(9, 12);
});

// source: hand. Arithmetic worked with bc. 3/8 medium: D = 9.525, d = 6.35, h = 3.175/1.1315456 = 2.805897; turns 7/16 × 24 = 10.5.
// Gap = 2.805897 × 0.0115775 = 0.032485. Path: π × 9.525 = 29.92367, P = 1.0583333, √(895.42603 + 1.12007) = 29.94238;
// × 10.5 = 314.395 mm. V: D² = 90.725625, D·d = 60.48375, d² = 40.3225; π/4 × 90.725625 × 2.805897 = 199.93624;
// π × 2.805897/12 × 191.531875 = 0.7345820 × 191.531875 = 140.69587; V = 59.24037.
it('3/8 medium pressure, recomputed by hand', () => {
  const cone = { odMm: 9.525, noseMm: 6.35, coneAngleDeg: 59 };
  expect(coneHeightMm(cone)).toBeCloseTo(2.805897, 5);
  expect(seatGapMm(cone)).toBeCloseTo(0.032485, 5);
  expect(Math.abs(coneVolumeMm3(cone) - 59.24037)).toBeLessThan(0.001);
  expect(toothPathPerEndM({ odMm: 9.525, tpi: 24, lengthMm: 11.1125 })).toBeCloseTo(0.314395, 5);
});

// source: hand. Worked table of the trade sheet, rounded: 422 ÷ 142 mm³ "about three", 16.9 ÷ 9.0 turns "up to 1.9x".
// Extremes of the printed figures: 421.5/142.5 = 2.958 to 422.5/141.5 = 2.986; 16.85/9.05 = 1.862 to 16.95/8.95 = 1.894.
it('at 9/16 one high-pressure end wears like about three cones and 1.9 threads of medium pressure', () => {
  const medium = { odMm: 14.2875, tpi: 18, threadLengthMm: 12.7, coneAngleDeg: 59, noseMm: 10.3124 };
  const high = { ...medium, threadLengthMm: 23.8125, noseMm: 7.1374 };
  const ratio = (op: 'cone' | 'thread') =>
    exposureAmount(baseExposurePerEnd({ op, connection: high })) /
    exposureAmount(baseExposurePerEnd({ op, connection: medium }));
  expect(ratio('cone')).toBeGreaterThan(2.958);
  expect(ratio('cone')).toBeLessThan(2.986);
  expect(ratio('thread')).toBeGreaterThan(1.862);
  expect(ratio('thread')).toBeLessThan(1.894);
});
