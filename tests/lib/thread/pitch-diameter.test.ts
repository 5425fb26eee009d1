import { expect, it } from 'vitest';
import { basicPitchDiameterMm } from '@/lib/thread/pitch-diameter';

// source: hand. 9/16-18 in inches: 0.5625 − 0.64951905/18 = 0.5625 − 0.03608439 = 0.52641561 in; × 25.4 = 13.3709565 mm.
it('takes 0.64951905 P off the major diameter', () => {
  expect(basicPitchDiameterMm({ majorMm: 14.2875, tpi: 18 })).toBeCloseTo(13.3709565, 6);
});

// source: formula. 3/4 of the height of the 60° triangle, H = √3/2 · P: 3√3/8 = 0.649519052838…
it('the coefficient is that of the 60° triangle', () => {
  const dropMm = 25.4 - basicPitchDiameterMm({ majorMm: 25.4, tpi: 25.4 });
  // The standard prints eight decimals: half a unit of the eighth.
  expect(Math.abs(dropMm - (3 * Math.sqrt(3)) / 8)).toBeLessThan(0.5e-8);
});

it('throws where the thread is deeper than the rod', () => {
  expect(() => basicPitchDiameterMm({ majorMm: 0.5, tpi: 18 })).toThrow('invariant broken');
});
