import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  bestWireMm,
  isUsableWire,
  leadAngleDeg,
  overWiresMm,
  pitchDiameterFromWiresMm,
  wireRangeMm,
} from '@/lib/thread/three-wire';

const threads = fc.record({
  pitchDiameterMm: fc.double({ min: 4, max: 100, noNaN: true }),
  tpi: fc.double({ min: 6, max: 48, noNaN: true }),
  share: fc.double({ min: 0.51, max: 1, noNaN: true }),
  leadAngle: fc.boolean(),
});

// source: identity. What is measured over wires gives back the pitch diameter it came from, with the lead angle or without.
it('goes there and back', () => {
  fc.assert(
    fc.property(threads, ({ pitchDiameterMm, tpi, share, leadAngle }) => {
      const wireMm = (share * 25.4) / tpi;
      const measured = overWiresMm({ pitchDiameterMm, tpi, wireMm, leadAngle });
      const back = pitchDiameterFromWiresMm({ overWiresMm: measured, tpi, wireMm, leadAngle });
      expect(Math.abs(back - pitchDiameterMm)).toBeLessThan(1e-9);
      expect(measured).toBeGreaterThan(pitchDiameterMm);
    }),
  );
});

// source: identity. The best wire is usable, and the ends of the range are as 1 : 2, both in proportion to the pitch.
it('the best wire lies inside the usable range', () => {
  fc.assert(
    fc.property(fc.double({ min: 4, max: 80, noNaN: true }), (tpi) => {
      const { leastMm, mostMm } = wireRangeMm(tpi);
      expect(isUsableWire({ tpi, wireMm: bestWireMm(tpi) })).toBe(true);
      expect(isUsableWire({ tpi, wireMm: leastMm })).toBe(false);
      expect(isUsableWire({ tpi, wireMm: mostMm })).toBe(false);
      expect(mostMm / leastMm).toBeCloseTo(2, 12);
    }),
  );
});

// source: formula. tan λ = P ÷ (π·E): at E = P ÷ π it is 45°.
it('lead angle', () => {
  expect(leadAngleDeg({ pitchDiameterMm: 25.4 / (10 * Math.PI), tpi: 10 })).toBeCloseTo(45, 12);
});

it('throws on wires and sizes that are not above 0', () => {
  expect(() => overWiresMm({ pitchDiameterMm: 0, tpi: 18, wireMm: 1 })).toThrow('invariant broken');
  expect(() => pitchDiameterFromWiresMm({ overWiresMm: 1, tpi: 18, wireMm: 4 })).toThrow('invariant broken');
  expect(() => leadAngleDeg({ pitchDiameterMm: -1, tpi: 18 })).toThrow('invariant broken');
});
