import fc from 'fast-check';
import { expect, it } from 'vitest';
import { coneHeightMm, seatGapMm } from '@/lib/cone/geometry';
import { seatCone } from '@/lib/cone/seating';

const NINE_SIXTEENTHS = { odMm: 14.2875, noseMm: 7.1374, coneAngleDeg: 59 };
const shapes = fc
  .record({
    odMm: fc.double({ min: 6, max: 30, noNaN: true }),
    share: fc.double({ min: 0.3, max: 0.9, noNaN: true }),
    coneAngleDeg: fc.double({ min: 50, max: 70, noNaN: true }),
  })
  .map(({ odMm, share, coneAngleDeg }) => ({ odMm, noseMm: odMm * share, coneAngleDeg }));

// source: identity. A rigid cone pushed home touches somewhere and enters the seat's wall nowhere.
it('touches, and goes through nothing', () => {
  fc.assert(
    fc.property(shapes, (shape) => {
      const seated = seatCone(shape);
      const wall = Math.tan(Math.PI / 6);
      const atNose = seated.noseToSeatPointMm * wall - shape.noseMm / 2;
      const atLarge = (seated.noseToSeatPointMm + coneHeightMm(shape)) * wall - shape.odMm / 2;
      expect(Math.min(atNose, atLarge)).toBeCloseTo(0, 9);
      expect(seated.gapAtSmallEndMm).toBeCloseTo(atNose, 9);
      expect(seated.gapAtLargeEndMm).toBeCloseTo(atLarge, 9);
      expect(seated.contact).toBe(shape.coneAngleDeg < 60 ? 'small-end' : 'large-end');
    }),
  );
});

// source: published. The trade's worked table: 9/16 high pressure, 59° in 60°, gap at the large end 0.073 mm; contact at the nose.
it('a 59° cone in a 60° seat touches at its nose', () => {
  const seated = seatCone(NINE_SIXTEENTHS);
  expect(seated.contact).toBe('small-end');
  expect(seated.contactDiameterMm).toBe(7.1374);
  expect(Number(seated.gapAtLargeEndMm.toFixed(3))).toBe(0.073);
  expect(seated.gapAtLargeEndMm).toBeCloseTo(seatGapMm(NINE_SIXTEENTHS), 12);
});

// source: hand. Equal angles touch over the whole face; a wider cone at its large end.
it('equal and wider angles', () => {
  const equal = seatCone({ ...NINE_SIXTEENTHS, coneAngleDeg: 60 });
  expect([equal.contact, equal.gapAtSmallEndMm, equal.gapAtLargeEndMm]).toEqual(['whole-face', 0, 0]);
  const wider = seatCone({ ...NINE_SIXTEENTHS, coneAngleDeg: 61 });
  expect([wider.contact, wider.contactDiameterMm, wider.gapAtLargeEndMm]).toEqual(['large-end', 14.2875, 0]);
  expect(wider.gapAtSmallEndMm).toBeGreaterThan(0);
});

it('throws on a seat that cannot be', () => {
  expect(() => seatCone(NINE_SIXTEENTHS, 0)).toThrow('invariant broken');
});
