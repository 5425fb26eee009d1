import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkConeShape, coneHeightMm, coneVolumeMm3, seatGapMm } from '@/lib/cone/geometry';

/** Any cone that can be cut: nose between 5 and 95 % of the tube, included angle 20 to 120 degrees. */
const anyCone = fc
  .record({
    odMm: fc.double({ min: 3, max: 60, noNaN: true }),
    nosePart: fc.double({ min: 0.05, max: 0.95, noNaN: true }),
    coneAngleDeg: fc.double({ min: 20, max: 120, noNaN: true }),
  })
  .map(({ odMm, nosePart, coneAngleDeg }) => ({ odMm, noseMm: odMm * nosePart, coneAngleDeg }));

// source: hand. Included 90° → α = 45°, tan α = 1: D 10, d 4 → h = 6/2 = 3.
it('coneHeightMm is half the difference of the diameters at 90 degrees', () => {
  expect(coneHeightMm({ odMm: 10, noseMm: 4, coneAngleDeg: 90 })).toBeCloseTo(3, 12);
});

// source: hand. As above: cylinder π/4 × 100 × 3 = 75π; frustum π × 3/12 × (100 + 40 + 16) = 39π; removed 36π = 113.0973355.
it('coneVolumeMm3 is the cylinder less the frustum', () => {
  expect(coneVolumeMm3({ odMm: 10, noseMm: 4, coneAngleDeg: 90 })).toBeCloseTo(113.0973355, 6);
});

// source: formula. Pappus: the removed section is a triangle, (D−d)/2 by h, its centroid at radius D/2 − (D−d)/6.
it('coneVolumeMm3 agrees with Pappus’s theorem', () => {
  fc.assert(
    fc.property(anyCone, (cone) => {
      const { odMm: od, noseMm: nose } = cone;
      const areaMm2 = ((od - nose) / 4) * coneHeightMm(cone);
      const pappusMm3 = 2 * Math.PI * (od / 2 - (od - nose) / 6) * areaMm2;
      // The cylinder may be 20 times the ring that is left after subtraction: 1e-12 leaves room for that cancellation.
      expect(Math.abs(coneVolumeMm3(cone) / pappusMm3 - 1)).toBeLessThan(1e-12);
    }),
  );
});

// source: identity. A wider tube with the same nose loses more metal; a wider nose on the same tube less.
it('volume grows with the tube and shrinks with the nose', () => {
  fc.assert(
    fc.property(anyCone, fc.double({ min: 1.001, max: 2, noNaN: true }), (cone, factor) => {
      const volumeMm3 = coneVolumeMm3(cone);
      expect(coneVolumeMm3({ ...cone, odMm: cone.odMm * factor })).toBeGreaterThan(volumeMm3);
      expect(coneVolumeMm3({ ...cone, noseMm: cone.noseMm / factor })).toBeGreaterThan(volumeMm3);
    }),
  );
});

describe('seatGapMm', () => {
  // source: hand. tan 45° = 1 and h = 3 for the cone above; a seat of included 2·atan(1.5) = 112.6198649° leaves 3 × 0.5 = 1.5.
  it('is the height times the difference of the tangents', () => {
    const gapMm = seatGapMm({ odMm: 10, noseMm: 4, coneAngleDeg: 90 }, 112.6198649);
    expect(Math.abs(gapMm - 1.5)).toBeLessThan(1e-7);
  });

  // source: identity. Equal angles touch all along; the order of the angles decides the sign.
  it('is zero at the seat’s own angle, and changes sign there', () => {
    fc.assert(
      fc.property(anyCone, (cone) => {
        expect(seatGapMm(cone, cone.coneAngleDeg)).toBe(0);
        expect(seatGapMm(cone, cone.coneAngleDeg + 1)).toBeGreaterThan(0);
        expect(seatGapMm(cone, cone.coneAngleDeg - 1)).toBeLessThan(0);
      }),
    );
  });

  it('throws on a seat that cannot be', () => {
    expect(() => seatGapMm({ odMm: 10, noseMm: 4, coneAngleDeg: 59 }, 180)).toThrow('invariant broken');
  });
});

describe('checkConeShape', () => {
  // source: hand. Each breaks one rule of the doc block.
  it.each([
    [{ odMm: 0, noseMm: 4, coneAngleDeg: 59 }, 'odMm'],
    [{ odMm: Number.NaN, noseMm: 4, coneAngleDeg: 59 }, 'odMm'],
    [{ odMm: Number.POSITIVE_INFINITY, noseMm: 4, coneAngleDeg: 59 }, 'odMm'],
    [{ odMm: 10, noseMm: 0, coneAngleDeg: 59 }, 'noseMm'],
    [{ odMm: 10, noseMm: 10, coneAngleDeg: 59 }, 'noseMm'],
    [{ odMm: 10, noseMm: 12, coneAngleDeg: 59 }, 'noseMm'],
    [{ odMm: 10, noseMm: 4, coneAngleDeg: 0 }, 'coneAngleDeg'],
    [{ odMm: 10, noseMm: 4, coneAngleDeg: 180 }, 'coneAngleDeg'],
  ])('%j is refused at %s, and the formulas throw', (shape, field) => {
    expect(checkConeShape(shape)).toMatchObject({ ok: false, refusal: { field } });
    expect(() => coneVolumeMm3(shape)).toThrow('invariant broken');
  });

  // source: hand.
  it('accepts a cone that can be cut', () => {
    const shape = { odMm: 14.2875, noseMm: 7.1374, coneAngleDeg: 59 };
    expect(checkConeShape(shape)).toEqual({ ok: true, value: shape });
  });
});
