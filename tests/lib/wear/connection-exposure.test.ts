import { expect, it } from 'vitest';
import { exposureMicroOf, exposureOfEnd, rowExposureMicro } from '@/lib/wear/connection-exposure';
import { HIGH, MEDIUM, must, sentence } from '../../support/db';

// source: hand. 12.7 mm = 1/2 in, × 18 TPI = 9 turns; logged at 1/4 in it is 4.5.
it('a thread costs its turns, at its own length or the one logged', () => {
  expect(exposureOfEnd({ operation: 'thread', connection: MEDIUM })).toBeCloseTo(9, 12);
  expect(exposureOfEnd({ operation: 'thread', connection: MEDIUM, lengthMm: 6.35 })).toBeCloseTo(4.5, 12);
});

// source: hand. OD 14.2875, nose 10.3, half angle 29.5°: h = 3.9875 ÷ (2 × 0.5657728) = 3.5239411 mm;
// cylinder π/4 × 204.1327 × h = 564.9747, frustum π/12 × h × 457.3839 = 421.9655; difference 143.0 mm³.
it('a cone costs the metal removed, whatever length is named', () => {
  expect(exposureOfEnd({ operation: 'cone', connection: MEDIUM })).toBeCloseTo(143.0, 0);
  expect(exposureOfEnd({ operation: 'cone', connection: MEDIUM, lengthMm: 5 })).toBe(
    exposureOfEnd({ operation: 'cone', connection: MEDIUM }),
  );
});

// source: hand. 40 ends × 10.5 turns = 420 turns = 420 000 000 millionths.
it('a row is kept in whole millionths', () => {
  const row = { operation: 'thread', connection: HIGH, lengthMm: null, ends: 40 } as const;
  expect(exposureMicroOf(row)).toBe(420_000_000);
  expect(must(rowExposureMicro(row))).toBe(420_000_000);
});

it('a row too large to be added up exactly is refused in a sentence', () => {
  const pipe = { ...HIGH, odNum: 999, odDen: 1, noseMm: 1, coneAngleDeg: 10 };
  expect(
    sentence(rowExposureMicro({ operation: 'cone', connection: pipe, lengthMm: null, ends: 5000 })),
  ).toBe('5000 ends of 999 high pressure are more than one row can hold; check the size and the ends.');
});
