import { expect, it } from 'vitest';
import { helixLengthPerTurnMm, toothPathPerEndM } from '@/lib/thread/helix';

// source: hand. A 3-4-5 triangle: circumference 4 needs d = 4/π; pitch 3 needs 25.4/3 threads per inch; slope 5.
it('one turn unrolls into a right-angled triangle', () => {
  expect(helixLengthPerTurnMm({ diameterMm: 4 / Math.PI, tpi: 25.4 / 3 })).toBeCloseTo(5, 12);
});

// source: formula. The same length another way: P ÷ sin λ, with tan λ = P ÷ (π·d).
it('agrees with the lead angle', () => {
  const leadAngleRad = Math.atan2(25.4 / 18, Math.PI * 13.371);
  expect(helixLengthPerTurnMm({ diameterMm: 13.371, tpi: 18 })).toBeCloseTo(
    25.4 / 18 / Math.sin(leadAngleRad),
    10,
  );
});

// source: hand. The triangle above with 9 mm of thread, that is 3 turns of pitch 3: 15 mm = 0.015 m.
it('the path of an end is turns times one turn', () => {
  expect(toothPathPerEndM({ odMm: 4 / Math.PI, tpi: 25.4 / 3, lengthMm: 9 })).toBeCloseTo(0.015, 12);
});

it('throws without a diameter', () => {
  expect(() => helixLengthPerTurnMm({ diameterMm: 0, tpi: 18 })).toThrow('invariant broken');
});
